using System.Globalization;
using ColdSim.Files.Quantities;

namespace ColdSim.Files.Weather;

/// <summary>What a weather file says of itself, as comment lines above the headings of our own CSV.</summary>
internal static class StationComment
{
    private const string Station = "Station: ";
    private const string Position = "Position: ";
    private const string Elevation = "Elevation: ";
    private const string Issued = "Issued: ";

    /// <summary>The lines, without the sign of a comment; only those that something is known for.</summary>
    public static IEnumerable<string> Lines(WeatherStation station)
    {
        ArgumentNullException.ThrowIfNull(station);
        if (station.Name is { Length: > 0 } name)
            yield return $" {Station}{name}.";
        if (station is { Latitude_deg: { } latitude, Longitude_deg: { } longitude })
            yield return string.Create(CultureInfo.InvariantCulture, $" {Position}{latitude:0.####}, {longitude:0.####}");
        if (station.Elevation_m is { } elevation_m)
            yield return string.Create(CultureInfo.InvariantCulture, $" {Elevation}{elevation_m:0.#} m");
        if (station.Issued is { } issued)
            yield return $" {Issued}{InstantText.Of(issued)}";
    }

    /// <summary>Reads them back.</summary>
    /// <param name="head">The first lines of the file.</param>
    internal static WeatherStation Read(IReadOnlyList<string> head)
    {
        WeatherStation station = new();
        for (int i = 0; i < head.Count; i++)
        {
            ReadOnlySpan<char> line = head[i].AsSpan().Trim('\uFEFF').Trim();
            if (line.IsEmpty)
                continue;
            if (line[0] != '#')
                break;
            station = With(station, line[1..].Trim());
        }

        return station;
    }

    private static WeatherStation With(WeatherStation station, ReadOnlySpan<char> line)
    {
        if (line.StartsWith(Station, StringComparison.Ordinal))
            return station with { Name = line[Station.Length..].TrimEnd('.').ToString() };
        if (line.StartsWith(Position, StringComparison.Ordinal))
        {
            ReadOnlySpan<char> both = line[Position.Length..];
            int comma = both.IndexOf(',');
            return comma > 0 && Number(both[..comma], 90) is { } latitude && Number(both[(comma + 1)..], 180) is { } longitude
                ? station with { Latitude_deg = latitude, Longitude_deg = longitude } : station;
        }

        if (line.StartsWith(Elevation, StringComparison.Ordinal))
        {
            return QuantityText.TryParseLength(line[Elevation.Length..].ToString(), out UnitsNet.Length length, out _) && Math.Abs(length.Meters) <= 9000
                ? station with { Elevation_m = length.Meters } : station;
        }

        return line.StartsWith(Issued, StringComparison.Ordinal) && InstantText.TryRead(line[Issued.Length..].ToString(), null, out DateTimeOffset issued) == InstantText.Outcome.Read
            ? station with { Issued = issued } : station;
    }

    private static double? Number(ReadOnlySpan<char> text, double limit)
        => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && Math.Abs(value) <= limit ? value : null;
}
