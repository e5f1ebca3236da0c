using System.Text;

namespace ColdSim.Files.Scenarios.Starters;

/// <summary>The commented file of a rig; it names no date, so that it holds on any weather.</summary>
internal static class StarterRigText
{
    // Where the comments begin.
    private const int CommentColumn = 34;

    /// <summary>The scenario.</summary>
    /// <param name="rig">What is known of the rig.</param>
    /// <param name="weatherFile">The weather file that it names.</param>
    public static string Of(StarterRig rig, string weatherFile)
    {
        ArgumentNullException.ThrowIfNull(rig);
        StringBuilder text = new();
        text.Append("# A ColdSim scenario. Every quantity is a text with its unit, in either system: \"20 lb\" or \"9 kg\".\n");
        text.Append("# All keys are described in docs/scenario.md; coldsim check says what is assumed of the rest.\n\n");
        Line(text, "title", Quoted(rig.Place is { } place ? $"Nights at {place}" : "My coach"));
        Table(text, "[place]");
        Line(text, "name", Quoted(rig.Place ?? "somewhere"));
        if (rig.Elevation is { } elevation)
            Line(text, "elevation", Quoted(elevation));
        else
            Line(text, "# elevation", rig.IsMetric ? "\"1,600 m\"" : "\"5,300 ft\"", "not known: the weather file's, else sea level");
        text.Append("# latitude = 44.5                  # with longitude, for the sun's direction; west is negative\n# longitude = -110.5\n");
        Table(text, "[weather]");
        Line(text, "file", Quoted(weatherFile), "beside this file; see docs/weather-csv.md");
        text.Append("\n# The run is all of the weather; start and nights pick a part of it.\n[run]\n");
        Cylinders(text, rig);
        Table(text, "[furnace]");
        Line(text, "input", Quoted(rig.Furnace), "from the plate");
        Table(text, "[thermostat]");
        Line(text, "day", Quoted(rig.Day));
        Line(text, "night", Quoted(rig.Night));
        Line(text, "night_hours", "\"22:00-06:30\"");
        Table(text, "[people]");
        Line(text, "awake", $"[{Quoted(rig.Awake)}]", "when somebody resets a furnace or changes a cylinder");
        Line(text, "count", rig.People);
        Table(text, "[coach]");
        Line(text, "length", Quoted(rig.Length));
        Line(text, "grade", Quoted(rig.Grade), "\"good\", \"ordinary\" or \"leaky\"; a fit replaces it, see docs/log-and-fit.md");
        if (rig.Chemistry is not null)
            Battery(text, rig);
        if (rig.HasPipes)
            Pipes(text, rig.IsMetric);
        return text.ToString();
    }

    private static void Cylinders(StringBuilder text, StarterRig rig)
    {
        bool several = rig.Cylinders.Count > 1;
        foreach (StarterCylinder cylinder in rig.Cylinders)
        {
            Table(text, several ? "[[cylinder]]" : "[cylinder]");
            Line(text, "size", Quoted(cylinder.Size), several ? null : "or water_capacity and diameter from the plate");
            Line(text, "left", Quoted(cylinder.Left), "of the legal filling; or a mass, such as " + (rig.IsMetric ? "\"5 kg\"" : "\"12 lb\""));
        }

        if (several)
        {
            Table(text, "[arrangement]");
            Line(text, "kind", Quoted(rig.Joined), "\"by hand\", \"changeover\" or \"together\"");
        }

        if (rig.CylindersAt is not { } at)
            return;
        Table(text, "[enclosure]");
        Line(text, "kind", Quoted(at), "\"open\", \"by the wall\", \"tongue cover\" or \"ventilated locker\"");
    }

    private static void Battery(StringBuilder text, StarterRig rig)
    {
        Table(text, "[battery]");
        Line(text, "chemistry", Quoted(rig.Chemistry!), "\"flooded\", \"agm\", \"gel\" or \"lithium iron phosphate\"");
        Line(text, "capacity", Quoted(rig.Capacity));
        text.Append("\n# [solar]\n# rated = \"200 W\"\n");
        Table(text, "[[load]]");
        Line(text, "name", "\"boards and detectors\"");
        Line(text, "draws", "\"0.8 A\"", "all day");
        Table(text, "[[load]]");
        Line(text, "name", "\"lights\"");
        Line(text, "draws", "\"2 A\"");
        Line(text, "hours", "[\"17:00-22:30\"]");
    }

    private static void Pipes(StringBuilder text, bool metric)
    {
        text.Append("\n# A bay below the floor that a duct of the furnace warms, and what is in it.\n[[wet_bay]]\n");
        Line(text, "name", "\"belly\"");
        Line(text, "to_inside", "\"5 W/K\"");
        Line(text, "to_outside", "\"4 W/K\"");
        Line(text, "duct", "\"6 %\"", "of the furnace's heat");
        Table(text, "[[pipe]]");
        Line(text, "name", "\"cold line\"");
        Line(text, "length", metric ? "\"3 m\"" : "\"10 ft\"");
        Line(text, "where", "\"belly\"", "or \"inside\", or \"outside\"");
        Table(text, "[[tank]]");
        Line(text, "name", "\"fresh water\"");
        Line(text, "where", "\"belly\"");
        Line(text, "volume", metric ? "\"110 L\"" : "\"30 gal\"");
        Line(text, "water", metric ? "\"75 L\"" : "\"20 gal\"");
    }

    private static void Table(StringBuilder text, string header) => text.Append('\n').Append(header).Append('\n');

    private static void Line(StringBuilder text, string key, string value, string? comment = null)
    {
        string line = $"{key} = {value}";
        text.Append(comment is null ? line : $"{line.PadRight(CommentColumn)} # {comment}").Append('\n');
    }

    private static string Quoted(string text) => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
