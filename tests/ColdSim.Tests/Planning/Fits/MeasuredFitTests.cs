using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Files;
using Xunit;
using Xunit.Abstractions;

namespace ColdSim.Tests.Planning.Fits;

/// <summary>Temperatures and pressures of the cylinder in a fit. Rig and log are invented: a big draw from a cylinder that stands more in the wind than the scenario says.</summary>
public class MeasuredFitTests(ITestOutputHelper output)
{
    private const double Truth = 0.6;

    // Eight in ten of the prior lie within so much of its middle, to both sides together.
    private const double PriorInterval = 2 * 1.2816 * 0.2;

    private static readonly Scenario Written = Drawn();

    private static readonly RunReport True = NightRun.Of(Written with { Rig = FittedFactors.None.With(FitKind.WindExposure, Truth).Over(Written.Rig) });

    private static readonly LogReading[] Weighed = [.. Enumerable.Range(0, 9).Select(i => new LogReading
    {
        Line = 2 + i,
        Time = Written.Start.AddHours(6 * i),
        Reading = new WeightReading { Name = "weight", Scale_kg = True.Series.Propane_kg[360 * i] + 10, Tare_kg = 10 },
    })];

    private static Scenario Drawn()
    {
        Scenario three = ScenarioReader.Read(Path.Combine(DocPage.Scenarios, "three-days.toml")).Scenario!;
        CylinderSpecification size = InventedCoach.Cylinder("100 lb"), cylinder = SizeSweep.Resized(three.Rig.Cylinders[0], size) with { Contents_kg = size.Contents_kg };
        return three with { Rig = three.Rig with { Cylinders = [cylinder], Appliances = [new ConstantDraw { Name = "kiln", Input_W = 8000, HeatToCoach_frac = 0 }] } };
    }

    // A thermometer that shows half a kelvin too much, and is read half a kelvin off one way and the other.
    private static Measurement At(int hour, MeasuredQuantity quantity = MeasuredQuantity.Liquid, double off = 0) => new()
    {
        Line = 100 + hour,
        Time = Written.Start.AddHours(hour),
        Quantity = quantity,
        Value = off + (quantity == MeasuredQuantity.Pressure ? True.Series.CylinderPressure_Pa[60 * hour] : True.Series.Liquid_K[60 * hour] + 0.5 + (hour % 2 == 0 ? 0.5 : -0.5)),
        StandardError = quantity == MeasuredQuantity.Pressure ? 5000 : 0.6,
        Cylinder = 0,
    };

    private FitEstimate? Wind(params Measurement[] measured)
    {
        FitReport fit = CoachFit.Of(Written with { Measurements = measured }, Weighed);
        FitEstimate? wind = fit.Estimates.FirstOrDefault(e => e.Kind == FitKind.WindExposure);
        output.WriteLine(wind is null ? "silent" : $"{wind.Value:0.00}, {wind.Low:0.00} to {wind.High:0.00}, learned {wind.Learned_frac:0.00}; used {fit.MeasuredUsed}");
        return wind;
    }

    [Fact]
    public void Weights_alone_say_nothing_of_wind_exposure_and_temperatures_of_the_liquid_narrow_it_about_the_truth()
    {
        Assert.Null(Wind());
        FitEstimate wind = Wind([.. Enumerable.Range(4, 44).Where(h => h % 3 == 0).Select(h => At(h))])!;
        Assert.True(wind.High - wind.Low < 0.9 * PriorInterval);
        Assert.InRange(Truth, wind.Low, wind.High);
        Assert.InRange(wind.Value, Written.Rig.Cylinders[0].Surroundings.WindExposure_frac + 0.05, Truth + 0.05);
    }

    [Fact]
    public void Pressures_say_the_same_within_their_wider_error()
    {
        FitEstimate wind = Wind([.. Enumerable.Range(4, 44).Where(h => h % 3 == 0).Select(h => At(h, MeasuredQuantity.Pressure))])!;
        Assert.True(wind.High - wind.Low < 0.9 * PriorInterval);
        Assert.InRange(Truth, wind.Low, wind.High);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void A_misread_thermometer_is_left_out()
    {
        Measurement[] good = [.. Enumerable.Range(4, 44).Where(h => h % 3 == 0).Select(h => At(h))];
        FitReport clean = CoachFit.Of(Written with { Measurements = good }, Weighed);
        FitReport spoiled = CoachFit.Of(Written with { Measurements = [.. good, At(22, off: 25)] }, Weighed);
        Assert.Equal([122], spoiled.MeasuredLeftOut);
        Assert.Equal(clean.Estimates.Select(e => e.Value), spoiled.Estimates.Select(e => e.Value));
        Assert.Empty(clean.MeasuredLeftOut);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Values_of_the_air_inside_and_outside_the_stretches_are_no_observations()
    {
        Measurement inside = At(12) with { Quantity = MeasuredQuantity.Inside, Cylinder = null, Value = 280 };
        FitReport with = CoachFit.Of(Written with { Measurements = [inside, At(12) with { Time = Written.Start.AddHours(60) }] }, Weighed), without = CoachFit.Of(Written, Weighed);
        Assert.Equal(0, with.MeasuredUsed);
        Assert.Equal(without.Estimates.Select(e => (e.Value, e.Low, e.High)), with.Estimates.Select(e => (e.Value, e.Low, e.High)));
    }
}
