using System.Text.Json;
using ColdSim.Files.Quantities;
using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather.Formats;

/// <summary>MET Norway's locationforecast, compact or complete: JSON with a list of instants in UTC, hourly at first and then in blocks of some hours.</summary>
internal static class MetNorwayJson
{
    private static readonly (WeatherColumn Column, string Name, string Unit)[] Variables =
    [
        (WeatherColumn.Air, "air_temperature", "celsius"),
        (WeatherColumn.DewPoint, "dew_point_temperature", "celsius"),
        (WeatherColumn.Humidity, "relative_humidity", "%"),
        (WeatherColumn.Wind, "wind_speed", "m/s"),
        (WeatherColumn.Cloud, "cloud_area_fraction", "%"),
    ];

    private static readonly UnitSpelling[] Units = [.. Variables.Select(v => v.Column.Unit(v.Unit == "celsius" ? "°C" : v.Unit))];

    /// <summary>An instant, and the lowest and highest of the six hours that begin then.</summary>
    private sealed record Instant(WeatherRow Row, int Line, double? Low_K, double? High_K);

    public static void Read(WeatherInput input, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        if (JsonText.Read(input, faults) is not { } json)
            return;
        TimeSpan shown = request.Offset ?? TimeSpan.Zero;
        rows.Station = new() { Name = "forecast point", Offset = request.Offset };
        rows.Clock = request.Offset is null ? "UTC" : $"UTC, shown as UTC{InstantText.OfOffset(shown)}";
        rows.EmptyMessage = "no instants in the list 'timeseries'";
        List<Instant> instants = [];
        JsonNumbers numbers = new(json, rows, faults);
        bool found = false;
        try
        {
            Utf8JsonReader reader = new(json.Bytes, JsonValues.Options);
            while (reader.Read())
            {
                if (reader.TokenType != JsonTokenType.PropertyName)
                    continue;
                if (reader.ValueTextEquals("geometry"u8))
                    Position(ref reader, rows);
                else if (reader.ValueTextEquals("meta"u8))
                    Meta(ref reader, json, rows, faults);
                else if (!found && reader.ValueTextEquals("timeseries"u8))
                    found = Instants(ref reader, json, shown, numbers, instants, rows, faults);
            }
        }
        catch (JsonException e)
        {
            JsonValues.ReportBroken(faults, json, e);
            return;
        }

        if (!found)
        {
            faults.Report(1, 1, "no list 'timeseries'", "accepted: the answer of the service's locationforecast, compact or complete");
            return;
        }

        Add(instants, rows, faults);
        numbers.Finish();
        rows.Finish(json.LineOf(json.Bytes.Length));
    }

    private static bool Instants(
        ref Utf8JsonReader reader, JsonText json, TimeSpan shown, JsonNumbers numbers, List<Instant> instants, RowCollector rows, WeatherFaults faults)
    {
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartArray)
            return false;
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            long place = reader.TokenStartIndex;
            using JsonDocument one = JsonDocument.ParseValue(ref reader);
            if (one.RootElement.Text("time") is not { } text || InstantText.TryRead(text, null, out DateTimeOffset time) != InstantText.Outcome.Read)
            {
                faults.Report(json.LineOf(place), json.ColumnOf(place), "time is not a date and time in UTC", InstantText.Accepted);
                rows.HasSkippedRows = true;
                continue;
            }

            faults.At = time;
            JsonElement data = one.RootElement.Object("data") ?? default;
            JsonElement details = (data.Object("instant") ?? default).Object("details") ?? default;
            double?[] values = new double?[Variables.Length];
            for (int i = 0; i < values.Length; i++)
            {
                (WeatherColumn column, string name, _) = Variables[i];
                values[i] = numbers.Of(column, Units[i], details.Number(name), name, place);
                if (values[i] is not null)
                    rows.DeclareColumn(column);
            }

            if (values[0] is not { } air)
            {
                numbers.LeaveOut();
                continue;
            }

            double? dewPoint = values[1] ?? (values[2] is { } humidity ? WeatherColumn.DewPoint_K(air, humidity) : null);
            JsonElement block = (data.Object("next_6_hours") ?? default).Object("details") ?? default;
            double? Extreme(string name) => numbers.Of(WeatherColumn.Air, Units[0], block.Number(name), name, place);
            instants.Add(new(
                new WeatherRow(time.ToOffset(shown), air, values[3], dewPoint, null, values[4]), json.LineOf(place), Extreme("air_temperature_min"), Extreme("air_temperature_max")));
        }

        return true;
    }

    private static void Add(List<Instant> instants, RowCollector rows, WeatherFaults faults)
    {
        DateTimeOffset? since = null;
        bool hasExtremes = false;
        for (int i = 0; i < instants.Count && !rows.IsPastWindow; i++)
        {
            (WeatherRow row, int line, double? low_K, double? high_K) = instants[i];
            rows.Add(row, line);
            if (i + 1 == instants.Count || !ForecastBlocks.Is(row, instants[i + 1].Row))
                continue;
            since ??= row.Time;
            WeatherRow next = instants[i + 1].Row;
            bool printed = next.Time - row.Time == TimeSpan.FromHours(6) && (low_K ?? high_K) is not null;
            hasExtremes |= printed;
            foreach (WeatherRow hour in ForecastBlocks.Hours(row, next, printed ? low_K : null, printed ? high_K : null))
                rows.Add(hour, line);
        }

        if (since is { } first)
        {
            string through = hasExtremes ? ", through the lowest and highest printed for each block" : "; no lowest of a block is printed, so a night's low may be missed";
            faults.Note($"{faults.File}: from {InstantText.Of(first)} on in blocks of some hours; the hours between lie on straight lines{through}");
        }
    }

    // Units are the same for everybody today; another is refused rather than misread.
    private static void Meta(ref Utf8JsonReader reader, JsonText json, RowCollector rows, WeatherFaults faults)
    {
        long place = reader.TokenStartIndex;
        if (!reader.Read())
            return;
        using JsonDocument meta = JsonDocument.ParseValue(ref reader);
        if (meta.RootElement.Text("updated_at") is { } text && InstantText.TryRead(text, null, out DateTimeOffset issued) == InstantText.Outcome.Read)
            rows.Station = rows.Station with { Issued = issued };
        JsonElement units = meta.RootElement.Object("units") ?? default;
        foreach ((_, string name, string unit) in Variables)
        {
            if (units.Text(name) is { } other && other != unit)
                faults.Report(json.LineOf(place), json.ColumnOf(place), $"units: {name} is in '{Quote.Of(other)}'", $"accepted: {unit}");
        }
    }

    private static void Position(ref Utf8JsonReader reader, RowCollector rows)
    {
        if (!reader.Read())
            return;
        using JsonDocument geometry = JsonDocument.ParseValue(ref reader);
        if (geometry.RootElement.ValueKind == JsonValueKind.Object && geometry.RootElement.TryGetProperty("coordinates", out JsonElement array) && array.Position() is { } point)
        {
            rows.Station = rows.Station with
            {
                Longitude_deg = point[0],
                Latitude_deg = point[1],
                Elevation_m = point.Length > 2 && Math.Abs(point[2]) <= 9000 ? point[2] : null,
            };
        }
    }
}
