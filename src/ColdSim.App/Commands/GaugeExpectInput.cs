using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Physics.Units;
using ColdSim.Planning;
using ColdSim.Planning.Gauges;

namespace ColdSim.App.Commands;

/// <summary>When and which cylinder's instruments are asked about.</summary>
/// <param name="At">The time; null for the usual one.</param>
/// <param name="Cylinder">Place of the cylinder, from 0; null for the one in use.</param>
/// <param name="Assumed_K">The temperature that an echo sensor is made for. [K]</param>
internal sealed record ExpectQuestion(DateTimeOffset? At, int? Cylinder, double Assumed_K);

/// <summary>Reads the options of <c>gauge expect</c>; all faults are reported together.</summary>
internal sealed class GaugeExpectInput(ParseResult parsed, Option<string?> at, Option<string?> cylinder, Option<string?> assumed)
    : OptionInput(parsed)
{
    private const double Coldest_K = ConversionFactors.ZeroCelsius_K - 60, Warmest_K = ConversionFactors.ZeroCelsius_K + 55;

    /// <summary>The question to a scenario.</summary>
    /// <param name="scenario">The scenario that is run.</param>
    /// <exception cref="CommandFault">What is wrong, all of it.</exception>
    public ExpectQuestion Of(Scenario scenario)
    {
        ExpectQuestion question = new(
            Text(at) is { } time ? Time(time, scenario) : null,
            Text(cylinder) is { } name ? Place(name, scenario) : null,
            Read<UnitsNet.Temperature>(
                assumed, QuantityText.TryParseTemperature, t => t.Kelvins, Coldest_K, Warmest_K, "-60 to 55 °C (-76 to 131 °F)") ?? DriftTable.Assumed_K);
        return Faults.Count == 0 ? question
            : throw CommandFault.Input([.. Faults.Select(f => $"coldsim: {f}"), "See 'coldsim gauge expect --help'."]);
    }

    private DateTimeOffset? Time(string text, Scenario scenario)
    {
        if (CommonOptions.InstantOf(text, scenario) is not { } time)
            Faults.Add($"{at.Name}: {CommonOptions.NoTime(text)}");
        else if (time >= scenario.Start && time <= scenario.End)
            return time;
        else
            Faults.Add($"{at.Name}: {ClockText.Start(time)} is outside the run, "
                + $"which goes from {ClockText.Start(scenario.Start)} to {ClockText.Start(scenario.End)}");
        return null;
    }

    private int? Place(string name, Scenario scenario)
    {
        IReadOnlyList<string> names = scenario.Rig.CylinderNames();
        for (int i = 0; i < names.Count; i++)
        {
            if (string.Equals(names[i], name.Trim(), StringComparison.OrdinalIgnoreCase))
                return i;
        }

        string nearest = NearestName.Of(name, names) is { } meant ? $"; did you mean '{meant}'?" : "";
        Faults.Add($"{cylinder.Name}: no cylinder is called '{Quote.Of(name)}'; "
            + $"there {(names.Count == 1 ? "is" : "are")} {string.Join(", ", names)}{nearest}");
        return null;
    }
}
