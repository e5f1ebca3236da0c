using System.Globalization;
using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Model;
using ColdSim.Model.Electrical;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using ColdSim.Tests.Model;
using ColdSim.Tests.Planning.Trips;
using Xunit;

namespace ColdSim.Tests.Files;

public class TripResultsTests
{
    [Fact]
    public void The_document_has_the_keys_of_its_figures()
    {
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(Json().RootElement, "", written);
        TripReport all = WithEverything;
        ResultsTests.Collect(
            Json(all with { Run = all.Run with { Scenario = all.Run.Scenario with { StartedFrom = Reports.LogStart } } }).RootElement, "", written);
        ResultsTests.AssertKeys("trip", written);
    }

    [Fact]
    public void Json_has_numbers_and_words_under_their_keys()
    {
        JsonElement root = Json().RootElement;
        Assert.Equal(14, root.GetProperty("nights").GetArrayLength());
        JsonElement second = root.GetProperty("refills")[1];
        Assert.Equal(("fill", "weight", "cannot_wait"), (second.GetProperty("kind").GetString(), second.GetProperty("stopped_by").GetString(), second.GetProperty("wait").GetString()));
        Assert.Equal("2027-01-18T09:00:00-07:00", second.GetProperty("too_late").GetString());
        Assert.Equal(2, root.GetProperty("nights")[7].GetProperty("refills")[0].GetInt32());
        Assert.True(root.GetProperty("totals").GetProperty("ledger_closes").GetBoolean());
    }

    [Fact]
    public void Csv_has_a_row_a_night()
    {
        using StringWriter text = new();
        CsvReport.Write(FortnightStoryTests.Story.Value, text);
        string[] lines = text.ToString().Split('\n');
        Assert.Equal(
            "night from,UTC offset,night to,stop,verdict,outside low [°C],inside low [°C],gas used [kg],margin [kW],changes,blankets [Wh],refills,"
            + "left left at dawn [kg],right left at dawn [kg],furnace gas [kg],refrigerator gas [kg],inside low at,first failure,freezing [h],lowest of water and inside [°C],no heat [h],cold kelvin-hours,short [min],no flame [min],weak flame [min],"
            + "locked out with gas [min]",
            lines[0]);
        Assert.StartsWith("2027-01-08 16:00:00,-07:00,2027-01-09 12:00:00,Osprey Bench,holds,", lines[1], StringComparison.Ordinal);
        Assert.Equal(16, lines.Length);
    }

    [Fact]
    public void Csv_has_the_gas_of_each_appliance_and_the_12_V_side()
    {
        TripReport report = TwoNights(Powered with { Appliances = [Rigs.Draw(1_500) with { Name = "fridge" }] });
        string[][] cells = Cells(report);
        Assert.Equal(["furnace gas [kg]", "fridge gas [kg]", "voltage gone [min]", "charge low [%]", "inside low at"], cells[0][13..18]);
        for (int i = 0; i < 2; i++)
        {
            NightReport night = report.Nights[i].Night;
            Assert.Equal(night.GasByAppliance.Select(g => g.Gas.Kilograms.ToString("F3", CultureInfo.InvariantCulture)), cells[i + 1][13..15]);
            Assert.Equal(
                [night.Power!.VoltageGone.Minutes.ToString("F1", CultureInfo.InvariantCulture), night.Power.ChargeLow.Percent.ToString("F1", CultureInfo.InvariantCulture)],
                cells[i + 1][15..17]);
            Assert.Equal(night.InsideLowAt, DateTimeOffset.Parse(cells[i + 1][17] + cells[i + 1][1], CultureInfo.InvariantCulture));
            double[] gas_kg = [.. cells[i + 1].Where((_, c) => c is 7 or 13 or 14).Select(t => double.Parse(t, CultureInfo.InvariantCulture))];
            Assert.Equal(gas_kg[0], gas_kg[1] + gas_kg[2], 0.0015);
            Assert.True(gas_kg[2] > 0.1);
        }

        // The fan empties so small a battery in the first night.
        Assert.Equal("battery flat", cells[1][4]);
        Assert.True(report.Nights[0].Night.Power!.VoltageGone.Minutes > 1);
    }

    [Fact]
    public void Csv_has_columns_only_for_what_the_rig_has()
    {
        string[] power = ["voltage gone [min]", "charge low [%]"];
        Assert.Empty(More(Rigs.Heated()));
        Assert.Empty(More(Rigs.Heated() with { Furnace = null, Thermostat = null, Appliances = [Rigs.Draw(1_000)] }));
        Assert.Equal(["furnace gas [kg]", "draw gas [kg]"], More(Rigs.Heated() with { Appliances = [Rigs.Draw(1_000)] }));
        Assert.Equal(power, More(Powered));
        Assert.Equal(
            ["furnace gas [kg]", "generator gas [kg]", .. power], More(Powered with { Power = Powered.Power! with { Generator = new GeneratorSpecification { Rated_W = 1_000 } } }));

        // Twelve of every trip first, then one for the cylinder; ten of every trip last.
        static string[] More(Rig rig) => Cells(TwoNights(rig))[0][13..^10];
    }

    [Fact]
    public void Trip_json_has_who_drew_what_water_and_the_12_V_side_of_each_night()
    {
        JsonElement night = Json(WithEverything).RootElement.GetProperty("nights")[0];
        Assert.Equal(["furnace", "stove"], night.GetProperty("gas_by_appliance").EnumerateArray().Select(g => g.GetProperty("name").GetString()));
        Assert.Equal(0.62, night.GetProperty("power").GetProperty("charge_low_frac").GetDouble());
        Assert.Equal("dump valve", night.GetProperty("water")[0].GetProperty("name").GetString());
        Assert.Equal(JsonValueKind.Null, Json().RootElement.GetProperty("nights")[0].GetProperty("power").ValueKind);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Trip_json_has_blend_short_times_and_damp_of_each_night_as_run_json_has()
    {
        JsonElement night = Json(WithEverything).RootElement.GetProperty("nights")[0];
        JsonElement blend = night.GetProperty("blends")[0];
        Assert.Equal((0.25, 3.5), (blend.GetProperty("end").GetProperty("propane").GetDouble(), blend.GetProperty("left_behind_kg").GetDouble()));
        Assert.Equal("2025-01-15T01:00:00-07:00", night.GetProperty("first_short").GetString());
        Assert.Equal(JsonValueKind.Null, night.GetProperty("freezing_at").ValueKind);
        Assert.Equal(0, night.GetProperty("damp_time_s").GetDouble());
        Assert.Equal(0, Json().RootElement.GetProperty("nights")[0].GetProperty("blends").GetArrayLength());
    }

    private static Rig Powered => Rigs.Heated() with
    {
        Cylinders = [Rigs.Bottle("40 lb", 0.9)],
        Power = new PowerSpecification { Battery = BatterySpecification.Of(BatteryChemistry.Agm, 20 * NominalVoltage.AmpereHour_J) },
    };

    private static TripReport TwoNights(Rig rig) => TripRun.Of(SomeTrips.Of(rig, [SomeTrips.Stop("a", 0, 20), SomeTrips.Stop("b", 20, 44)]));

    private static string[][] Cells(TripReport report)
    {
        using StringWriter text = new();
        CsvReport.Write(report, text);
        return [.. text.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split(','))];
    }

    private static TripReport WithEverything => FortnightStoryTests.Story.Value with
    {
        Nights = [FortnightStoryTests.Story.Value.Nights[0] with { Night = Reports.Short().Nights[0] }],
    };

    private static JsonDocument Json(TripReport? report = null)
    {
        using MemoryStream stream = new();
        JsonReport.Write(report ?? FortnightStoryTests.Story.Value, stream);
        return JsonDocument.Parse(stream.ToArray());
    }
}
