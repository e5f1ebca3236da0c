using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Heaters;
using ColdSim.Model.Moisture;
using ColdSim.Planning;
using Xunit;

namespace ColdSim.Tests.Files;

public class HeatersAndDampReaderTests
{
    private const string Coach = "\n[coach]\nlength = \"20 ft\"\nwidth = \"2.4 m\"\ngrade = \"ordinary\"\n";

    private static Scenario Read(string text)
    {
        ReadResult result = Fixtures.Read(Fixtures.Least + text);
        Assert.Empty(result.Problems);
        return result.Scenario!;
    }

    [Fact]
    public void Heaters_read_with_hours_and_their_own_thermostat()
    {
        Rig rig = Read(Coach + "[[heater]]\nruns_on = \"shore\"\noutput = \"1,500 W\"\nset_point = \"17 °C\"\n[[heater]]\nname = \"stove\"\nruns_on = \"wood\"\noutput = \"5 kW\"\nhours = [\"18:00-22:00\"]\n").Rig;
        Assert.Equal(("heater", 1500, HeaterSupply.ShorePower), (rig.Heaters[0].Name, rig.Heaters[0].Output_W, rig.Heaters[0].Supply));
        Assert.Equal((289.15, 291.15), (rig.Heaters[0].Thermostat!.Value.On_K, rig.Heaters[0].Thermostat!.Value.Off_K));
        Assert.Equal(("stove", HeaterSupply.OwnFuel), (rig.Heaters[1].Name, rig.Heaters[1].Supply));
        Assert.Equal(new ClockWindow(18 * 3600, 22 * 3600), Assert.Single(rig.Heaters[1].Hours));
    }

    [Fact]
    public void Covers_ventilation_and_breaker_read()
    {
        Rig rig = Read("\n[place]\nbreaker = \"1.8 kW\"\n" + Coach + "ventilation = \"36 m³/h\"\n[coach.covers]\nsaves = \"9 W/K\"\nhours = [\"20:00-07:00\"]\n").Rig;
        Assert.Equal(1800, rig.Site.Breaker_W);
        Assert.Equal(0.01, rig.Coach!.Ventilation_m3_s, 1e-9);
        Assert.Equal(9, rig.Coach.Covers_W_K, 1e-9);
        Assert.Equal(new ClockWindow(20 * 3600, 7 * 3600), Assert.Single(rig.Coach.CoverHours));
    }

    [Fact]
    public void Damp_is_followed_where_its_table_is_given_and_uses_people_and_floor()
    {
        Assert.Null(Read(Coach).Rig.Coach!.Moisture);
        MoistureSpecification damp = Read("\n[people]\ncount = 3\n" + Coach + "[coach.moisture]\n").Rig.Coach!.Moisture!;
        Assert.Equal(0.15 / 3600, damp.Sources_kg_s, 1e-12);
        Assert.Equal(20 * 0.3048 * 2.4 * 2, damp.Volume_m3, 1e-6);
    }

    [Theory]
    [InlineData("2027-01-13T03:00:00")]
    [InlineData("2025-01-14T15:59:00")]
    [InlineData("2025-01-14T21:00:00")]
    public void A_furnace_cannot_stop_outside_the_run(string stops)
    {
        ReadResult result = Fixtures.Read(Fixtures.Least + $"\n[thermostat]\nday = \"18 °C\"\n\n[furnace]\ninput = \"20,000 BTU/h\"\nstops_at = {stops}\n" + Coach);
        string told = Assert.Single(result.Problems).ToString();
        Assert.Contains("outside the run; accepted: from 2025-01-14T16:00:00-07:00 to before 2025-01-14T21:00:00-07:00", told, StringComparison.Ordinal);
    }

    [Fact]
    public void What_runs_on_shore_power_and_has_none_gives_a_warning()
    {
        ReadResult read = Fixtures.Read(Fixtures.Least + Coach
            + "[[heater]]\nname = \"fan heater\"\nruns_on = \"shore\"\noutput = \"1,500 W\"\n\n[[refrigerator]]\ninput = \"1,500 BTU/h\"\nelectric = \"300 W\"\n");
        Assert.Contains(read.Scenario!.Assumptions, a => a.Contains("fan heater: it runs on shore power, and [place] has no hookup, so it gives no heat", StringComparison.Ordinal));
        Assert.Contains(read.Scenario.Assumptions, a => a.Contains("its electric element has no hookup", StringComparison.Ordinal));
    }

    [Fact]
    public void The_furnace_may_be_said_to_stop()
    {
        const string Heated = "\n[thermostat]\nday = \"18 °C\"\n\n[furnace]\ninput = \"20,000 BTU/h\"\nstops_at = 2025-01-14T18:00:00\n";
        Scenario scenario = Read(Heated + Coach);
        Assert.Equal(new TimeSpan(18, 0, 0), scenario.HeatStops!.Value.TimeOfDay);
        Assert.Equal(scenario.Start.Offset, scenario.HeatStops.Value.Offset);
    }

    [Theory]
    [InlineData("[[heater]]\noutput = \"1 kW\"\n", "lacks 'runs_on'")]
    [InlineData("[[heater]]\nruns_on = \"shroe\"\noutput = \"1 kW\"\n", "did you mean 'shore'?")]
    [InlineData("[[heater]]\nruns_on = \"wood\"\n", "lacks 'output'")]
    [InlineData("[[heater]]\nruns_on = \"wood\"\noutput = \"1 kW\"\ndifferential = \"1 K\"\n", "'differential' has no effect without 'set_point'")]
    [InlineData("[coach.covers]\n", "lacks 'saves'")]
    [InlineData("[coach.covers]\nsaves = \"400 W/K\"\n", "the covers save as much as the whole coach loses")]
    [InlineData("[coach.moisture]\nstart_humidity = 2\n", "accepted: 0.01 to 1")]
    public void Faults_say_what_is_accepted(string text, string said)
    {
        ReadResult result = Fixtures.Read(Fixtures.Least + Coach + text);
        Assert.Null(result.Scenario);
        Assert.Contains(said, Assert.Single(result.Problems).ToString(), StringComparison.Ordinal);
    }
}
