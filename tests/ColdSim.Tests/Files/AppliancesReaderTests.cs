using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Nodes;
using Xunit;

namespace ColdSim.Tests.Files;

public class AppliancesReaderTests
{
    private const string Head = Fixtures.Least + "\n[coach]\nlength = \"20 ft\"\ngrade = \"ordinary\"\n";

    private static Rig Read(string text)
    {
        ReadResult result = Fixtures.Read(Head + text);
        Assert.Empty(result.Problems);
        return result.Scenario!.Rig;
    }

    private static IReadOnlyList<string> Assumed(string text) => Fixtures.Read(Head + text).Scenario!.Assumptions;

    [Fact]
    public void A_refrigerator_reads()
    {
        AbsorptionRefrigerator box = Assert.IsType<AbsorptionRefrigerator>(Assert.Single(Read(
            "[[refrigerator]]\nname = \"box\"\ninput = \"2,000 BTU/h\"\nelectric = \"300 W\"\nset_point = \"38 °F\"\nneeds_power = false\nminimum_pressure = \"8 inH2O\"\n").Appliances));
        Assert.Equal("box", box.Name);
        Assert.Equal(2000 * 0.29307107, box.Input_W, 1e-3);
        Assert.Equal(300, box.ElectricInput_W);
        Assert.Equal(276.483, box.SetPoint_K, 1e-3);
        Assert.False(box.NeedsPower);
        Assert.Equal(8 * 249.0889, box.MinimumPressure_Pa, 0.01);
    }

    [Fact]
    public void A_water_heater_reads_with_its_draws()
    {
        StorageWaterHeater heater = Assert.IsType<StorageWaterHeater>(Assert.Single(Read(
            "[[water_heater]]\nvolume = \"10 gal\"\ninput = \"12,000 BTU/h\"\ndraws = [\"07:00-07:10 4 L/min\", \"19:00-19:05 1 gpm\"]\naltitude = \"code percentage\"\n").Appliances));
        Assert.Equal(37.854, heater.Water_kg, 1e-3);
        Assert.Equal([new WaterDraw(new ClockWindow(7 * 3600, 7 * 3600 + 600), heater.Draws[0].Flow_kg_s), heater.Draws[1]], heater.Draws);
        Assert.Equal(4.0 / 60, heater.Draws[0].Flow_kg_s, 1e-9);
        Assert.Equal(3.785411784 / 60, heater.Draws[1].Flow_kg_s, 1e-9);
        Assert.Equal(AltitudeRule.CodePercentage, heater.Altitude);
        Assert.True(heater.NeedsPower);
    }

    [Fact]
    public void Stove_oven_shower_and_panel_read_in_their_order()
    {
        Rig rig = Read("""
            [[cooker]]
            kind = "stove"
            burners = 2
            meals = ["07:00-07:30"]
            [[cooker]]
            kind = "oven"
            meals = "18:00-19:00"
            [[on_demand_heater]]
            flow = "6 L/min"
            hours = ["07:30-07:40"]
            [[catalytic_heater]]
            set_point = "16 °C"
            differential = "1 K"
            [[draw]]
            rate = "500 W"
            """);
        Assert.Equal(["draw 1", "on-demand heater", "stove", "oven", "catalytic heater"], rig.Appliances.Select(a => a.Name));
        Assert.Equal(14_000 * 0.29307107, rig.Appliances[2].Input_W, 1e-3);
        Assert.Equal(0.1, Assert.IsType<OnDemandWaterHeater>(rig.Appliances[1]).Flow_kg_s, 1e-9);
        Assert.Equal(new SwitchBand(288.65, 289.65), Assert.IsType<CatalyticHeater>(rig.Appliances[4]).OwnThermostat);
    }

    [Fact]
    public void What_has_no_name_is_given_one_that_is_free()
    {
        Rig rig = Read("""
            [[refrigerator]]
            [[refrigerator]]
            [[refrigerator]]
            name = "refrigerator 2"
            [[draw]]
            name = "Stove"
            rate = "500 W"
            [[draw]]
            rate = "500 W"
            [[cooker]]
            kind = "stove"
            meals = ["07:00-07:30"]
            [[heater]]
            runs_on = "wood"
            output = "1 kW"
            [[heater]]
            runs_on = "diesel"
            output = "1 kW"
            """);
        Assert.Equal(["Stove", "draw 2", "refrigerator", "refrigerator 3", "refrigerator 2", "stove 2"], rig.Appliances.Select(a => a.Name));
        Assert.Equal(["heater", "heater 2"], rig.Heaters.Select(h => h.Name));
    }

    [Theory]
    [InlineData("[[draw]]\nname = \"box\"\nrate = \"1 W\"\n[[refrigerator]]\nname = \"Box\"\n", "s.toml:12:8: 'name' is \"Box\", and another appliance is called so; accepted: a name of its own")]
    [InlineData("[[draw]]\nrate = \"1 W\"\nname = \"furnace\"\n[furnace]\ninput = \"4 kW\"\n[thermostat]\n", "s.toml:10:8: 'name' is \"furnace\", and the scenario's own furnace is called so; accepted: a name of its own")]
    [InlineData("[[draw]]\nrate = \"1 W\"\nname = \"generator\"\n[generator]\nrated = \"2 kW\"\n[battery]\ncapacity = \"100 Ah\"\n", "s.toml:10:8: 'name' is \"generator\", and the scenario's own generator is called so; accepted: a name of its own")]
    [InlineData("[[heater]]\nname = \"a\"\nruns_on = \"wood\"\noutput = \"1 kW\"\n[[heater]]\nname = \"a\"\nruns_on = \"wood\"\noutput = \"1 kW\"\n", "s.toml:13:8: 'name' is \"a\", and another heater is called so; accepted: a name of its own")]
    [InlineData("[battery]\ncapacity = \"100 Ah\"\n[[load]]\nname = \"a\"\ndraws = \"1 A\"\n[[load]]\nname = \"a\"\ndraws = \"1 A\"\n", "s.toml:14:8: 'name' is \"a\", and another load is called so; accepted: a name of its own")]
    public void A_name_used_twice_is_refused(string text, string expected) => Assert.Contains(expected, Fixtures.Faults(Head + text));

    [Fact]
    public void A_draw_may_be_called_furnace_where_there_is_none()
        => Assert.Equal("furnace", Assert.Single(Read("[[draw]]\nrate = \"1 W\"\nname = \"furnace\"\n").Appliances).Name);

    [Theory]
    [InlineData("22:00-24:00", 22, 24)]
    [InlineData("00:00-24:00", 0, 24)]
    [InlineData("22:00-00:00", 22, 0)]
    public void A_span_may_end_with_the_day(string span, int from_h, int to_h)
    {
        ClockWindow window = Assert.Single(Assert.IsType<ConstantDraw>(Assert.Single(Read($"[[draw]]\nrate = \"1 W\"\nhours = [\"{span}\"]\n").Appliances)).Hours);
        Assert.Equal(new ClockWindow(from_h * 3600, to_h * 3600), window);
        Assert.True(window.Contains(23.5 * 3600));
        Assert.Equal(from_h == 0, window.Contains(60));
        Assert.Equal(1800, window.UntilEdge_s(23.5 * 3600));
    }

    [Fact]
    public void A_span_may_not_begin_with_the_end_of_a_day()
        => Assert.Equal(["s.toml:10:10: 'hours' is \"24:00-06:00\"; accepted: a span such as \"22:00-06:30\""], Fixtures.Faults(Head + "[[draw]]\nrate = \"1 W\"\nhours = [\"24:00-06:00\"]\n"));

    [Theory]
    [InlineData("", 0.15, 0.05)]
    [InlineData("duct_loss_to = \"outside\"", 0.15, 0.05)]
    [InlineData("duct_loss_to = \"Belly\"", 0, 0.2)]
    public void What_ducts_lose_goes_outside_or_into_the_bay_that_is_named(string where, double lost_frac, double toBay_frac)
    {
        Rig rig = Read($"""
            [[wet_bay]]
            name = "belly"
            duct = "5 %"
            [furnace]
            input = "16,000 BTU/h"
            duct_loss = "15 %"
            {where}
            [thermostat]
            """);
        Assert.Equal(lost_frac, rig.Furnace!.DuctLoss_frac, 1e-12);
        Assert.Equal(toBay_frac, rig.Water[0].Duct_frac, 1e-12);
    }

    [Fact]
    public void A_pipe_in_a_bay_and_a_tank_outside_read()
    {
        Rig rig = Read("""
            [[wet_bay]]
            name = "Belly"
            duct = "5 %"
            [[tank]]
            volume = "150 L"
            water = "100 L"
            conductance = "8 W/K"
            where = "outside"
            [[pipe]]
            inside_diameter = "1/2 in"
            outside_diameter = "5/8 in"
            length = "3 m"
            film = "10 W/m²K"
            where = "belly"
            [furnace]
            input = "16,000 BTU/h"
            [thermostat]
            """);
        Assert.Equal(["Belly", "pipe", "tank"], rig.Water.Select(n => n.Name));
        Assert.Equal(0.05, rig.Water[0].Duct_frac, 1e-12);
        ThermalNode pipe = rig.Water[1], tank = rig.Water[2];
        Assert.Equal(0, pipe.Bay);
        Assert.Equal(3 * Math.PI * 0.015875 * 10, pipe.Bay_W_K, 1e-6);
        Assert.Equal(0.38, pipe.Water_kg, 1e-3);
        Assert.Equal(3, pipe.IceLength_m);
        Assert.Equal((100.0, 8.0, -1), (tank.Water_kg, tank.Outside_W_K, tank.Bay));
    }

    [Fact]
    public void What_is_assumed_is_listed()
    {
        IReadOnlyList<string> assumed = Assumed("[[refrigerator]]\n[[water_heater]]\n[[pipe]]\nlength = \"1 m\"\nwhere = \"outside\"\n");
        Assert.Contains("refrigerator: input not given; assumed 1,500 BTU/h", assumed);
        Assert.Contains("water heater: volume not given; assumed 6 gal", assumed);
        Assert.Contains("water heater: draws not given, no hot water is drawn", assumed);
        Assert.Contains("pipe: film not given; assumed 25 W/m²K, in wind", assumed);
    }

    [Theory]
    [InlineData("[[cooker]]\nkind = \"stove\"\n", "s.toml:8:1", "lacks 'meals'")]
    [InlineData("[[cooker]]\nkind = \"oven\"\nmeals = []\n", "s.toml:10:1", "'meals' is empty")]
    [InlineData("[[cooker]]\nkind = \"stoev\"\nmeals = []\n", "s.toml:9:8", "did you mean 'stove'?")]
    [InlineData("[[on_demand_heater]]\nflow = \"3 L/min\"\n", "s.toml:8:1", "lacks 'hours'")]
    [InlineData("[[on_demand_heater]]\nflow = \"3 L\"\nhours = []\n", "s.toml:9:8", "'L' is not a unit of volume flow")]
    [InlineData("[[catalytic_heater]]\ninput = \"1 kW\"\n", "s.toml:8:1", "lacks 'hours' or 'set_point'")]
    [InlineData("[[catalytic_heater]]\nhours = []\ndifferential = \"1 K\"\n", "s.toml:10:1", "'differential' has no effect without 'set_point'")]
    [InlineData("[[water_heater]]\ndraws = [\"07:00-07:10\"]\n", "s.toml:9:10", "'draws' is \"07:00-07:10\"")]
    [InlineData("[[water_heater]]\ndraws = [\"07:00-07:10 4 L/mn\"]\n", "s.toml:9:10", "did you mean 'L/min'?")]
    [InlineData("[[water_heater]]\ndraws = [\"07:00-07:10 400 L/min\"]\n", "s.toml:9:10", "a flow up to 30 L/min")]
    [InlineData("[[water_heater]]\nminimum_pressure = \"11 inH2O\"\n", "s.toml:9:1", "the minimum pressure is above the full pressure")]
    [InlineData("[[refrigerater]]\n", "s.toml:8:1", "did you mean 'refrigerator'?")]
    [InlineData("[[refrigerator]]\nimput = \"1 kW\"\n", "s.toml:9:1", "did you mean 'input'?")]
    [InlineData("[[pipe]]\nlength = \"1 m\"\n", "s.toml:8:1", "lacks 'where'")]
    [InlineData("[[wet_bay]]\nname = \"belly\"\n[[pipe]]\nlength = \"1 m\"\nwhere = \"bely\"\n", "s.toml:12:9", "did you mean 'belly'?")]
    [InlineData("[[pipe]]\nlength = \"1 m\"\nwhere = \"inside\"\ninside_diameter = \"20 mm\"\n", "s.toml:11:1", "is not below the outside diameter")]
    [InlineData("[[pipe]]\nlength = \"1 m\"\nwhere = \"inside\"\nconductivity = \"0.04 W/mK\"\n", "s.toml:11:1", "'conductivity' has no effect without 'insulation'")]
    [InlineData("[[tank]]\nvolume = \"40 L\"\nwater = \"50 L\"\nwhere = \"inside\"\n", "s.toml:10:9", "more water than the tank holds")]
    [InlineData("[[tank]]\nname = \"a\"\nvolume = \"40 L\"\nwhere = \"inside\"\n[[pipe]]\nname = \"a\"\nlength = \"1 m\"\nwhere = \"inside\"\n", "s.toml:9:8", "another bay, pipe or tank is called so")]
    [InlineData("[[wet_bay]]\nname = \"inside\"\n", "s.toml:9:8", "which is another place")]
    public void What_cannot_be_is_refused_with_its_place(string more, string place, string what)
    {
        string fault = Assert.Single(Fixtures.Faults(Head + more), f => f.Contains(what, StringComparison.Ordinal));
        Assert.StartsWith(place, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void An_option_may_change_an_appliance_or_a_pipe_by_name()
    {
        ReadResult read = Fixtures.Read(Head + """
            [[cooker]]
            kind = "oven"
            name = "oven"
            meals = ["18:00-19:00"]
            [[pipe]]
            name = "drain"
            length = "1 m"
            where = "outside"
            [[option]]
            name = "lagged, and a later roast"
            [option.set]
            "cooker.oven.meals" = ["19:00-19:30"]
            "pipe.drain.insulation" = "1 in"
            """);
        Assert.Empty(read.Problems);
        Assert.True(read.Options[0].Scenario.Rig.Water[0].Outside_W_K < 0.5 * read.Scenario!.Rig.Water[0].Outside_W_K);
    }
}
