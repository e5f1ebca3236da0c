using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Nodes;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Reports;
using ColdSim.Tests.Docs;
using UnitsNet;
using Xunit;

namespace ColdSim.Tests.Files;

public class ResultsTests
{
    [Fact]
    public void A_long_document_goes_out_in_parts()
    {
        using Parts parts = new();
        JsonReport.Write(NightRun.Of(ScenarioReader.Read(Path.Combine(DocPage.Scenarios, "cold-snap.toml")).Scenario!), parts);
        Assert.InRange(parts.Longest, 1, 16_384);
        Assert.True(parts.Length > 4 * parts.Longest);
    }

    private sealed class Parts : MemoryStream
    {
        public int Longest { get; private set; }

        // The base class hands a span on to this one, as an array.
        public override void Write(byte[] buffer, int offset, int count)
        {
            Longest = Math.Max(Longest, count);
            base.Write(buffer, offset, count);
        }
    }

    [Fact]
    public void Json_has_numbers_times_and_words_under_their_keys()
    {
        JsonElement root = Json().RootElement;
        Assert.Equal("gas short", root.GetProperty("summary").GetProperty("verdict").GetString());
        Assert.Equal("2025-01-15T01:00:00-07:00", root.GetProperty("summary").GetProperty("first_short").GetString());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("summary").GetProperty("dry_at").ValueKind);
        JsonElement night = root.GetProperty("nights")[0];
        Assert.Equal(3.25, night.GetProperty("gas_used_kg").GetDouble());
        Assert.Equal(163.5725, night.GetProperty("gas_heat_mj").GetDouble());
        Assert.Equal(-31.25, night.GetProperty("liquid_temperature_min_c").GetDouble());
        Assert.Equal(2520, night.GetProperty("short_time_s").GetDouble());
        Assert.Equal(JsonValueKind.Null, night.GetProperty("left_at_dawn_kg").ValueKind);
        JsonElement second = root.GetProperty("events")[1];
        Assert.Equal("short_begins", second.GetProperty("kind").GetString());
        Assert.Equal(JsonValueKind.Null, second.GetProperty("inside_c").ValueKind);
        Assert.Equal(2e-9, root.GetProperty("ledger").GetProperty("energy_residual").GetDouble());
        Assert.True(root.GetProperty("ledger").GetProperty("closes").GetBoolean());
        JsonElement forecast = root.GetProperty("forecast");
        Assert.Equal(31, forecast.GetProperty("dry_members").GetInt32());
        Assert.Equal(JsonValueKind.Null, forecast.GetProperty("dry").GetProperty("high").ValueKind);
        Assert.Equal(1.5, forecast.GetProperty("left_at_dawn_kg")[0].GetProperty("median").GetDouble());
        Assert.Equal(1.25, forecast.GetProperty("days")[0].GetProperty("used_kg").GetDouble());
        Assert.Equal("wind: not in the weather file; assumed 2.0 m/s", root.GetProperty("assumptions")[0].GetString());
    }

    [Fact]
    public void The_document_has_the_keys_of_its_figures()
    {
        SortedSet<string> written = new(StringComparer.Ordinal);
        Collect(Json().RootElement, "", written);

        // The furnace of the first is made to stop; this one's goes short by itself.
        RunReport failed = Reports.Short() with { CoolDown = null };
        Rig wet = failed.Scenario.Rig with { Water = [new ThermalNode { Name = "tank", Capacity_J_K = 50e3, Water_kg = 10 }] };
        Collect(Json(failed with { Scenario = failed.Scenario with { Rig = wet, StartedFrom = Reports.LogStart, StartsNow = true } }).RootElement, "", written);
        Measurement measured = new()
        {
            Line = 3,
            Time = failed.Scenario.Start,
            Quantity = MeasuredQuantity.Liquid,
            Value = 260,
            StandardError = 1,
            Cylinder = 0,
        };
        Collect(Json(failed with { Scenario = failed.Scenario with { Measurements = [measured] } }).RootElement, "", written);
        written.ExceptWith(["measured", "measured_by_cause"]);
        AnswerDigest digest = AnswerDigest.Of(Reports.Short());
        using MemoryStream since = new();
        JsonReport.Write(new RunDocument(Reports.Short(), null) { Since = new AnswerChange(digest, digest, [new("title", "a", null)]) }, since);
        using JsonDocument changed = JsonDocument.Parse(since.ToArray());
        Collect(changed.RootElement, "", written);
        AssertKeys("run", written);
    }

    [Fact]
    public void Every_verdict_event_and_ending_has_a_word_and_the_page_knows_it()
    {
        string page = string.Join('\n', DocPage.Lines("json.md"));
        IEnumerable<string> words = ReportWords.Verdicts.All.Concat(EventKinds.Words.All).Concat(ReportWords.Ends.All).Select(w => w.Key);
        Assert.All(words, w => Assert.Contains($"`{w}`", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Csv_has_rows_a_minute_apart()
    {
        using StringWriter text = new();
        SeriesCsv.Write(Reports.Short(), text);
        string[] lines = text.ToString().Split('\n');
        Assert.Equal(
            "time,UTC offset,outside [°C],wind [m/s],inside [°C],set point [°C],liquid [°C],cylinder pressure [mbar gauge],delivery pressure [mbar gauge],"
            + "propane [kg],asked [kW],given [kW],can give now [kW],can give without end [kW],heat into cylinder [kW],burner [%]",
            lines[0]);
        Assert.StartsWith("2025-01-14 16:01:00,-07:00,-11.00,0.00,20.00,", lines[2], StringComparison.Ordinal);
        Assert.StartsWith("2025-01-14 16:02:00,-07:00,-12.00,0.00,,", lines[3], StringComparison.Ordinal);
        Assert.Equal(5, lines.Length);
    }

    private static JsonDocument Json(RunReport? of = null)
    {
        using MemoryStream stream = new();
        RunReport report = of ?? Reports.Short();
        LogReading read = new() { Line = 7, Time = report.Scenario.Start, Reading = new WeightReading { Name = "weight", Scale_kg = 12, Tare_kg = 8 } };
        Forecast forecast = new()
        {
            From = read,
            LeftAtDawn = [new(Mass.FromKilograms(1), Mass.FromKilograms(1.5), Mass.FromKilograms(2))],
            Dry = new(report.Scenario.Start.AddHours(30), report.Scenario.Start.AddHours(40), null),
            DryMembers = 31,
        };
        UseOfDay day = new(new(2025, 1, 13), Duration.FromHours(9), Mass.FromKilograms(1.25), Mass.FromKilograms(0.1), Mass.FromKilograms(1));
        JsonReport.Write(new ForecastReport(report, forecast, new LogPrediction([], [day])), stream);
        return JsonDocument.Parse(stream.ToArray());
    }

    /// <summary>Documents together have every key of their figures and no other.</summary>
    internal static void AssertKeys(string document, SortedSet<string> written)
        => Assert.Equal(JsonPage.Keys(JsonPage.Documents[document]).Select(k => k.Path).Order(StringComparer.Ordinal), written);

    internal static void Collect(JsonElement element, string path, SortedSet<string> keys)
    {
        if (path.Length > 0)
            keys.Add(path);
        if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (JsonProperty property in element.EnumerateObject())
                Collect(property.Value, path.Length == 0 ? property.Name : $"{path}.{property.Name}", keys);
        }
        else if (element.ValueKind == JsonValueKind.Array)
        {
            keys.Remove(path);
            keys.Add(path + "[]");
            foreach (JsonElement item in element.EnumerateArray())
            {
                if (item.ValueKind == JsonValueKind.Object)
                    Collect(item, path + "[]", keys);
            }
        }
    }
}
