using System.Text;
using System.Text.Json;
using ColdSim.Files.Quantities;
using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather.Formats;

/// <summary>Open-Meteo's answer: an object a place, with a list of times and one of values for each hourly variable, on one fixed offset.</summary>
internal static class OpenMeteoJson
{
    /// <summary>A list of one variable: its numbers, NaN for null, and where each is in the document.</summary>
    private sealed record Variable(List<double> Numbers, List<int> Places);

    private sealed class Place
    {
        public WeatherStation Station { get; set; } = new() { Name = "model cell" };

        public Dictionary<string, string> Units { get; } = [];

        public Dictionary<string, Variable> Hourly { get; } = [];

        public string? Refused { get; set; }

        public int At { get; set; }
    }

    public static void Read(WeatherInput input, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        if (JsonText.Read(input, faults) is not { } json)
            return;
        List<Place> places = [];
        try
        {
            Utf8JsonReader reader = new(json.Bytes, JsonValues.Options);
            Places(ref reader, places);
        }
        catch (JsonException e)
        {
            JsonValues.ReportBroken(faults, json, e);
            return;
        }

        if (places.Count == 0)
            faults.Report(1, 1, "no place in it", "accepted: the answer of the service's forecast or archive, an object with 'hourly' in it");
        else if (PlaceChoice.Of([.. places.Select(p => p.Station)], request, 1, faults) is { } chosen)
            Rows(json, places[chosen], request, rows, faults);
    }

    private static void Places(ref Utf8JsonReader reader, List<Place> places)
    {
        while (reader.Read())
        {
            if (reader.TokenType == JsonTokenType.StartObject)
                places.Add(OnePlace(ref reader));
        }
    }

    private static Place OnePlace(ref Utf8JsonReader reader)
    {
        Place place = new() { At = (int)reader.TokenStartIndex };
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string name = reader.GetString() ?? "";
            reader.Read();
            double? number = reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out double value) && double.IsFinite(value) ? value : null;
            WeatherStation station = place.Station;
            switch (name)
            {
                case "latitude" when number is >= -90 and <= 90: place.Station = station with { Latitude_deg = number }; break;
                case "longitude" when number is >= -180 and <= 180: place.Station = station with { Longitude_deg = number }; break;
                case "elevation" when number is > -9000 and < 9000: place.Station = station with { Elevation_m = number }; break;
                case "utc_offset_seconds" when number is { } seconds: place.Station = station with { Offset = InstantText.OffsetFromHours(seconds / 3600) }; break;
                case "reason" when reader.TokenType == JsonTokenType.String: place.Refused = reader.GetString(); break;
                case "hourly_units" when reader.TokenType == JsonTokenType.StartObject: Units(ref reader, place.Units); break;
                case "hourly" when reader.TokenType == JsonTokenType.StartObject: Hourly(ref reader, place.Hourly); break;
                default: reader.Skip(); break;
            }
        }

        return place;
    }

    private static void Units(ref Utf8JsonReader reader, Dictionary<string, string> units)
    {
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string name = reader.GetString() ?? "";
            reader.Read();
            if (reader.TokenType == JsonTokenType.String)
                units[name] = reader.GetString() ?? "";
            else
                reader.Skip();
        }
    }

    private static void Hourly(ref Utf8JsonReader reader, Dictionary<string, Variable> hourly)
    {
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string name = reader.GetString() ?? "";
            reader.Read();
            if (reader.TokenType != JsonTokenType.StartArray || (name != "time" && OpenMeteoVariables.Column(name) is null))
            {
                reader.Skip();
                continue;
            }

            Variable variable = new([], []);
            while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            {
                variable.Places.Add((int)reader.TokenStartIndex);
                variable.Numbers.Add(reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out double value) && double.IsFinite(value) ? value : double.NaN);
                if (reader.TokenType is JsonTokenType.StartArray or JsonTokenType.StartObject)
                    reader.Skip();
            }

            hourly[name] = variable;
        }
    }

    private static void Rows(JsonText json, Place place, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        int line = json.LineOf(place.At);
        if (!place.Hourly.TryGetValue("time", out Variable? times) || !place.Hourly.ContainsKey("temperature_2m"))
        {
            string what = place.Refused is { } reason ? $"the service refused: {Quote.Of(reason)}" : times is null ? "no list of times in 'hourly'" : "no list 'temperature_2m' in 'hourly'";
            faults.Report(line, 1, what, "accepted: an hourly answer with temperature_2m");
            return;
        }

        List<(WeatherColumn Column, string Name, UnitSpelling Unit, Variable Values)> columns = [];
        foreach ((string name, Variable values) in place.Hourly)
        {
            if (OpenMeteoVariables.Column(name) is not { } column || columns.Exists(c => c.Column == column))
                continue;
            string? spelling = place.Units.GetValueOrDefault(name);
            if (OpenMeteoVariables.Unit(column, spelling) is not { } unit)
                faults.Report(line, 1, $"hourly_units: '{Quote.Of(spelling!)}' is not a unit of {column.Dimension.Name()}");
            else if (values.Numbers.Count != times.Numbers.Count)
                faults.Report(line, 1, FormattableString.Invariant($"'{name}' has {values.Numbers.Count} values for {times.Numbers.Count} times"));
            else
                columns.Add((column, name, unit, values));
            rows.DeclareColumn(column);
            if (column == WeatherColumn.Sun)
                rows.Averaging = OpenMeteoVariables.Averaging(name);
        }

        if (faults.Any)
            return;
        TimeSpan? offset = request.Offset ?? place.Station.Offset;
        rows.Station = place.Station with { Offset = offset };
        rows.Clock = offset is { } o ? $"one fixed offset, UTC{InstantText.OfOffset(o)}" : "UTC";
        JsonNumbers numbers = new(json, rows, faults);
        for (int i = 0; i < times.Places.Count && !rows.IsPastWindow && !faults.AreTooMany; i++)
        {
            int at = times.Places[i];
            if (Time(json, at, times.Numbers[i], offset ?? TimeSpan.Zero) is not { } time)
            {
                faults.Report(json.LineOf(at), json.ColumnOf(at), "time: not a date and time", "accepted: such as 2024-01-31T23:00, or seconds since 1970");
                rows.HasSkippedRows = true;
                continue;
            }

            faults.At = time;

            double? Value(WeatherColumn column)
            {
                foreach ((WeatherColumn known, string name, UnitSpelling unit, Variable values) in columns)
                {
                    if (known == column)
                        return numbers.Of(column, unit, values.Numbers[i], name, values.Places[i]);
                }

                return null;
            }

            Add(rows, numbers, time, Value, json.LineOf(at));
        }

        numbers.Finish();
        rows.Finish(json.LineOf(json.Bytes.Length));
    }

    private static void Add(RowCollector rows, JsonNumbers numbers, DateTimeOffset time, Func<WeatherColumn, double?> value, int line)
    {
        double? air = value(WeatherColumn.Air), humidity = value(WeatherColumn.Humidity);
        double? dewPoint = value(WeatherColumn.DewPoint) ?? (air is { } a && humidity is { } h ? WeatherColumn.DewPoint_K(a, h) : null);
        double? wind = value(WeatherColumn.Wind), sun = value(WeatherColumn.Sun), cloud = value(WeatherColumn.Cloud), pressure = value(WeatherColumn.Pressure);
        if (air is { } known)
            rows.Add(new WeatherRow(time, known, wind, dewPoint, sun, cloud, pressure), line);
        else
            numbers.LeaveOut();
    }

    private static DateTimeOffset? Time(JsonText json, int at, double number, TimeSpan offset)
    {
        if (!double.IsNaN(number))
            return Math.Abs(number) < 100_000_000_000 ? DateTimeOffset.FromUnixTimeSeconds((long)number).ToOffset(offset) : null;
        ReadOnlySpan<byte> rest = json.Bytes[at..];
        int end = rest.Length > 1 && rest[0] == (byte)'"' ? rest[1..].IndexOf((byte)'"') : -1;
        return end is > 0 and < 40 && InstantText.TryRead(Encoding.UTF8.GetString(rest.Slice(1, end)), offset, out DateTimeOffset time) == InstantText.Outcome.Read ? time : null;
    }
}
