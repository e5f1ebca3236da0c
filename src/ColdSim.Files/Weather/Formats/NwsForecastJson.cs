using System.Globalization;
using System.Text.Json;
using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather.Formats;

/// <summary>The US weather service's hourly forecast: JSON with a list of hours, each with its own offset.</summary>
internal static class NwsForecastJson
{
    // A period of more than this is not an hour of the hourly forecast.
    private static readonly TimeSpan LongestPeriod = TimeSpan.FromHours(3);

    public static void Read(WeatherInput input, RowCollector rows, WeatherFaults faults)
    {
        if (JsonText.Read(input, faults) is not { } json)
            return;
        rows.Clock = "with each hour's own offset from UTC; a value belongs to the hour's beginning";
        rows.EmptyMessage = "no hours in the list 'periods'";
        rows.DeclareColumn(WeatherColumn.Wind);
        rows.DeclareColumn(WeatherColumn.DewPoint);
        bool found = false;

        // The forecast's place may come after its hours.
        List<(WeatherRow Row, int Line)> hours = [];
        try
        {
            Utf8JsonReader reader = new(json.Bytes, JsonValues.Options);
            while (reader.Read())
            {
                if (reader.TokenType != JsonTokenType.PropertyName)
                    continue;
                if (reader.ValueTextEquals("elevation"u8))
                    Elevation(ref reader, rows);
                else if (reader.ValueTextEquals("geometry"u8))
                    Position(ref reader, rows);
                else if (reader.ValueTextEquals("updateTime"u8))
                    Issued(ref reader, rows);
                else if (!found && reader.ValueTextEquals("periods"u8))
                    found = Periods(ref reader, json, hours, rows, faults);
            }
        }
        catch (JsonException e)
        {
            JsonValues.ReportBroken(faults, json, e);
            return;
        }
        if (!found && !faults.Any)
            faults.Report(1, 1, "no list 'periods'", "accepted: the answer of the service's 'forecastHourly'");
        else
        {
            if (hours.Count > 0)
                rows.Station = rows.Station with { Offset = hours[0].Row.Time.Offset };
            foreach ((WeatherRow row, int line) in hours)
                rows.Add(row, line);
            rows.Finish(1);
        }
    }

    private static bool Periods(ref Utf8JsonReader reader, JsonText json, List<(WeatherRow Row, int Line)> hours, RowCollector rows, WeatherFaults faults)
    {
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartArray)
            return false;
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            int line = json.LineOf(reader.TokenStartIndex);
            using JsonDocument period = JsonDocument.ParseValue(ref reader);
            if (Length(period.RootElement) is { } length && length > LongestPeriod)
            {
                hours.Clear();
                faults.Report(line, 1, FormattableString.Invariant($"the forecast of 12-hour periods, not the hourly one: a period of {length.TotalHours:0.##} h"),
                    "accepted: the answer of the service's 'forecastHourly', whose address ends in /forecast/hourly");
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                    reader.Skip();
                return true;
            }

            Period(period.RootElement, line, hours, rows, faults);
        }
        return true;
    }

    private static TimeSpan? Length(JsonElement period)
        => period.Text("startTime") is { } from && period.Text("endTime") is { } to
            && InstantText.TryRead(from, null, out DateTimeOffset start) == InstantText.Outcome.Read && InstantText.TryRead(to, null, out DateTimeOffset end) == InstantText.Outcome.Read
            ? end - start : null;

    private static void Period(JsonElement period, int line, List<(WeatherRow Row, int Line)> hours, RowCollector rows, WeatherFaults faults)
    {
        string? fault = null;
        if (period.ValueKind != JsonValueKind.Object)
            fault = "an hour that is no object";
        else if (period.Text("startTime") is not { } text || InstantText.TryRead(text, null, out DateTimeOffset time) != InstantText.Outcome.Read)
            fault = "startTime is not a date and time with an offset";
        else if (Temperature(period) is not { } air)
            fault = "temperature cannot be read";
        else if (air < WeatherColumn.Air.Limits.Low || air > WeatherColumn.Air.Limits.High)
            fault = $"temperature is out of range; accepted: {WeatherColumn.Air.Low} to {WeatherColumn.Air.High}";
        else if (!TryWind(period, out double? wind))
            fault = "windSpeed cannot be read; accepted: such as \"5 mph\" or \"10 to 15 mph\"";
        else
            hours.Add((new WeatherRow(time, air, wind, Dew(period, air)), line));
        if (fault is null)
            return;
        faults.Report(line, 1, fault);
        rows.HasSkippedRows = true;
    }

    private static double? Temperature(JsonElement period)
    {
        if (Value(period, "temperature", WeatherColumn.Air) is { } quantity)
            return quantity;
        return period.TryGetProperty("temperature", out JsonElement number) && number.ValueKind == JsonValueKind.Number && number.TryGetDouble(out double value)
            && period.Text("temperatureUnit") is { } unit && WeatherColumn.Air.FindUnit(unit) is { } known ? known.ToSi(value) : null;
    }

    private static double? Dew(JsonElement period, double air_K)
    {
        double? dew = Value(period, "dewpoint", WeatherColumn.DewPoint);
        if (dew is null && Value(period, "relativeHumidity", WeatherColumn.Humidity) is >= 0 and <= 1.1 and { } humidity)
            dew = WeatherColumn.DewPoint_K(air_K, Math.Min(1, humidity));
        return dew >= WeatherColumn.DewPoint.Limits.Low && dew <= WeatherColumn.DewPoint.Limits.High ? dew : null;
    }

    // "10 to 15 mph" is read as its mean.
    private static bool TryWind(JsonElement period, out double? wind)
    {
        wind = Value(period, "windSpeed", WeatherColumn.Wind);
        if (wind is not null || period.Text("windSpeed") is not { Length: > 0 } text)
            return wind is null or (>= 0 and <= 100);
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        double[] numbers = [.. words.Select(w => double.TryParse(w, NumberStyles.Float, CultureInfo.InvariantCulture, out double n) ? n : double.NaN).Where(double.IsFinite)];
        if (numbers.Length is < 1 or > 2 || WeatherColumn.Wind.FindUnit(words[^1]) is not { } unit)
            return false;
        wind = unit.ToSi(numbers.Average());
        return wind is >= 0 and <= 100;
    }

    // {"unitCode": "wmoUnit:degC", "value": -12.2}
    private static double? Value(JsonElement period, string name, WeatherColumn column)
    {
        if (!period.TryGetProperty(name, out JsonElement quantity) || quantity.ValueKind != JsonValueKind.Object
            || !quantity.TryGetProperty("value", out JsonElement value) || value.ValueKind != JsonValueKind.Number || !value.TryGetDouble(out double number)
            || quantity.Text("unitCode") is not { } code)
        {
            return null;
        }
        return code[(code.LastIndexOf(':') + 1)..] switch
        {
            "percent" => number / 100,
            "km_h-1" => column.Unit("km/h").ToSi(number),
            "m_s-1" => number,
            { } unit => column.FindUnit(unit)?.ToSi(number),
        };
    }

    private static void Issued(ref Utf8JsonReader reader, RowCollector rows)
    {
        if (reader.Read() && reader.TokenType == JsonTokenType.String && InstantText.TryRead(reader.GetString()!, null, out DateTimeOffset issued) == InstantText.Outcome.Read)
            rows.Station = rows.Station with { Issued = issued };
    }

    private static void Elevation(ref Utf8JsonReader reader, RowCollector rows)
    {
        if (!reader.Read())
            return;
        using JsonDocument elevation = JsonDocument.ParseValue(ref reader);
        if (elevation.RootElement.ValueKind == JsonValueKind.Object && elevation.RootElement.TryGetProperty("value", out JsonElement value)
            && value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out double m))
        {
            rows.Station = rows.Station with { Elevation_m = m };
        }
    }

    // The forecast's cell is a polygon; its middle is the mean of its corners, the last of which is the first again.
    private static void Position(ref Utf8JsonReader reader, RowCollector rows)
    {
        if (!reader.Read())
            return;
        using JsonDocument geometry = JsonDocument.ParseValue(ref reader);
        if (geometry.RootElement.ValueKind != JsonValueKind.Object || !geometry.RootElement.TryGetProperty("coordinates", out JsonElement rings)
            || rings.ValueKind != JsonValueKind.Array || rings.GetArrayLength() == 0 || rings[0].ValueKind != JsonValueKind.Array)
        {
            return;
        }
        JsonElement[] corners = [.. rings[0].EnumerateArray().Skip(1).Where(c => c.ValueKind == JsonValueKind.Array && c.GetArrayLength() >= 2
            && c[0].ValueKind == JsonValueKind.Number && c[1].ValueKind == JsonValueKind.Number)];
        if (corners.Length == 0)
            return;
        rows.Station = rows.Station with
        {
            Name = "forecast cell",
            Longitude_deg = corners.Average(c => c[0].GetDouble()),
            Latitude_deg = corners.Average(c => c[1].GetDouble()),
        };
    }
}
