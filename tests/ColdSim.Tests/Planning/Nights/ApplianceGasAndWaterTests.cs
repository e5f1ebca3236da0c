using ColdSim.Files.Results;
using ColdSim.Model;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model.Appliances;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Nights;

public class ApplianceGasAndWaterTests
{
    private static readonly Lazy<RunReport> Cold = new(() => ColdSim.Tests.Model.Rigs.Nights(Everything.Rig, Changing(h => -14 + 4 * Math.Sin(h / 4), 50), 2));

    [Fact]
    public void Gas_by_appliance_adds_up_to_the_gas_used()
    {
        Assert.All(Cold.Value.Nights, n =>
        {
            Assert.Equal(["furnace", "draw", "refrigerator", "water heater", "shower", "stove", "panel"], n.GasByAppliance.Select(g => g.Name));
            Assert.Equal(n.GasUsed.Kilograms, n.GasByAppliance.Sum(g => g.Gas.Kilograms), n.GasUsed.Kilograms * 1e-6);
            Assert.Equal(1, n.GasByAppliance.Sum(g => g.Share.DecimalFractions), 1e-12);
        });
        Assert.Equal(Cold.Value.Summary.GasUsed.Kilograms, Cold.Value.Summary.GasByAppliance.Sum(g => g.Gas.Kilograms), 1e-5);
    }

    [Fact]
    public void Gas_curves_of_the_appliances_add_up_to_the_total_curve()
    {
        IReadOnlyList<double[]> gas_W = Cold.Value.Series.Gas_W;
        for (int i = 1; i < Cold.Value.Series.Count; i++)
            Assert.Equal(Cold.Value.Series.Given_W[i], gas_W.Sum(g => g[i]), 1e-6 * (1 + Cold.Value.Series.Given_W[i]));
    }

    [Fact]
    public void Night_reports_and_events_name_the_water_that_freezes()
    {
        WaterReport outside = Cold.Value.Nights[0].Water.Single(w => w.Name == "outside");
        Assert.NotNull(outside.FreezesAt);
        Assert.True(outside.SolidAt > outside.FreezesAt);
        Assert.False(outside.Heated);
        Assert.Contains(Cold.Value.Events, e => e.Kind == ReportedKind.WaterFreezes && e.Node == "outside" && e.Time == outside.FreezesAt);
        Assert.Contains(Cold.Value.Events, e => e.Kind == ReportedKind.WaterSolid && e.Node == "outside");
    }

    [Fact]
    public void Bay_with_a_duct_is_reported_as_heated_and_without_water()
    {
        WaterReport belly = Cold.Value.Nights[0].Water[0];
        Assert.True(belly.Heated);
        Assert.False(belly.HoldsWater);
        Assert.True(Cold.Value.Nights[0].Water.Single(w => w.Name == "pipe").Heated);
    }

    [Fact]
    public void Water_alert_needs_unheated_water_and_air_of_20_F_or_less()
    {
        Assert.All(Cold.Value.Nights, n => Assert.True(n.WaterAlert));
        Rig inBelly = Everything.Rig with { Water = [Everything.Bay(0.08), Everything.Pipe(0, 3)] };
        Assert.False(ColdSim.Tests.Model.Rigs.Nights(inBelly, Steady(-14, 30), 1).Nights[0].WaterAlert);
        Assert.False(ColdSim.Tests.Model.Rigs.Nights(Everything.Rig, Steady(-6, 30), 1).Nights[0].WaterAlert);
    }

    [Fact]
    public void Leg_on_the_road_burns_nothing_and_keeps_the_temperature_of_the_tanks()
    {
        WeatherSeries weather = Steady(-10, 60);
        Leg Part(double from, double to, bool road = false)
            => new() { From = Start.AddHours(from), To = Start.AddHours(to), Site = new(), Weather = weather, OnTheRoad = road };
        RunReport report = NightRun.Of(Scenario(Everything.Rig, weather) with { Legs = [Part(0, 18), Part(18, 22, road: true), Part(22, 40)] });
        double[] heater_K = report.Series.Node_K[1];
        int leaves = 18 * 60, comes = 22 * 60;
        Assert.InRange(heater_K[leaves + 1] - heater_K[leaves], -0.3, 0.1);
        Assert.True(heater_K[comes] < heater_K[leaves] - 1);
        Assert.All(Enumerable.Range(leaves + 1, comes - leaves - 1), i => Assert.Equal(0, report.Series.Gas_W.Sum(g => g[i])));
        Assert.True(report.Ledger.Closes);
    }

    [Fact]
    public void Series_csv_has_a_column_for_every_appliance_and_water_node()
    {
        using StringWriter text = new();
        SeriesCsv.Write(Cold.Value, text);
        string heading = text.ToString().Split('\n')[0];
        Assert.EndsWith(
            ",furnace gas [kW],draw gas [kW],refrigerator gas [kW],water heater gas [kW],shower gas [kW],stove gas [kW],panel gas [kW]"
            + ",refrigerator [°C],water heater [°C],belly [°C],pipe [°C],outside [°C],tank [°C]",
            heading, StringComparison.Ordinal);
    }

    [Fact]
    public void First_to_starve_is_null_in_a_night_without_shortage()
        => Assert.All(ColdSim.Tests.Model.Rigs.Nights(Everything.Rig with { Cylinders = [BigTank()] }, Steady(-5, 30), 1).Nights, n => Assert.Null(n.FirstToStarve));
}
