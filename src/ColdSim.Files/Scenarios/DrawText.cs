using ColdSim.Files.Quantities;
using ColdSim.Files.Toml;
using ColdSim.Model.Nodes;
using ColdSim.Physics.Freezing;

namespace ColdSim.Files.Scenarios;

/// <summary>Water drawn: "07:00-07:10 4 L/min".</summary>
internal static class DrawText
{
    private const double Most_m3_s = 30e-3 / 60;
    private const string Accepted = "accepted: a span and a flow up to 30 L/min, such as \"07:00-07:10 4 L/min\"";

    /// <summary>A list of draws, or one draw alone.</summary>
    public static IReadOnlyList<WaterDraw>? Draws(this SectionReader section, string key)
    {
        switch (section.Value(key))
        {
            case null: return null;
            case TomlList list: return [.. list.Items.Select(i => Draw(section, key, i)).OfType<WaterDraw>()];
            case { } one: return Draw(section, key, one) is { } draw ? [draw] : [];
        }
    }

    private static WaterDraw? Draw(SectionReader section, string key, TomlValue value)
    {
        if (value is not TomlText text)
        {
            section.Reading.Report(value.Place, $"'{key}' is {value.Kind}", Accepted);
            return null;
        }
        string[] parts = text.Value.Trim().Split(' ', 2);
        if (ClockText.Window(parts[0]) is not { } window || parts.Length < 2)
        {
            section.Reading.Report(value.Place, $"'{key}' is \"{text.Value}\"", Accepted);
            return null;
        }
        if (SiText.Read(parts[1], Dimension.VolumeFlow, out double flow_m3_s) is { } fault)
        {
            section.Reading.Report(value.Place, $"'{key}': {fault.What}", fault.Accepted, fault.Nearest);
            return null;
        }
        if (flow_m3_s is > 0 and <= Most_m3_s)
            return new WaterDraw(window, flow_m3_s * Water.Density_kg_m3);
        section.Reading.Report(value.Place, $"'{key}' is \"{text.Value}\"", Accepted);
        return null;
    }
}
