using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Sensitivity;
using ColdSim.Tests.Model;
using Xunit;

namespace ColdSim.Tests.Planning.Ensemble;

/// <summary>What the members are made of, as docs/chance.md says it.</summary>
public class MembersTests
{
    private const int Members = 4000;
    private const int Hours = 44;

    // Normal, so that the sampling errors are those of the textbook.
    private static readonly ErrorSizes Errors = new() { Tail = new(1000, ""), Temperature = new(3, ""), TemperatureGrowth = new(0, ""), CorrelationTime = new(12 * 3600, "") };

    private static readonly Scenario Plain = Rigs.Scenario(
        Rigs.Heated() with { Cylinders = [Rigs.Bottle("20 lb", 0.9)] }, Rigs.Changing(h => -6 - 5 * Math.Cos(h / 12 * Math.PI)), 2);

    private static readonly Scenario TwoNights = Plain with { Errors = Errors };

    [Fact]
    public void The_air_of_the_members_is_off_by_what_is_asked_and_as_long_as_asked()
    {
        double[][] off_K = new double[Members][];
        double[] drawn = new double[Enum.GetValues<Uncertainty>().Length];
        ForecastMembers members = new(TwoNights, 5);
        for (int i = 0; i < Members; i++)
        {
            WeatherSeries weather = members.Of(i, drawn).Weather;
            off_K[i] = [.. Enumerable.Range(0, Hours).Select(h => At(weather, h).Air_K - At(TwoNights.Weather, h).Air_K)];
        }

        foreach (int hour in (int[])[1, 12, 40])
        {
            double spread = Math.Sqrt(off_K.Average(o => o[hour] * o[hour]));
            Assert.Equal(3, spread, 4 * 3 / Math.Sqrt(2 * Members));
            Assert.Equal(0, off_K.Average(o => o[hour]), 4 * 3 / Math.Sqrt(Members));
        }

        foreach (int apart in (int[])[1, 6, 24])
        {
            double asked = Math.Exp(-apart / 12.0);
            double xx = off_K.Sum(o => o[10] * o[10]), yy = off_K.Sum(o => o[10 + apart] * o[10 + apart]), xy = off_K.Sum(o => o[10] * o[10 + apart]);
            Assert.Equal(asked, xy / Math.Sqrt(xx * yy), 4 * (1 - asked * asked) / Math.Sqrt(Members));
        }
    }

    [Fact]
    public void Heat_loss_leaks_set_points_and_contents_are_off_by_what_is_asked()
    {
        double[] drawn = new double[Enum.GetValues<Uncertainty>().Length];
        ForecastMembers members = new(TwoNights with { Errors = Errors with { DoorOpenings = new(0, "") } }, 5);
        double[] loss = new double[Members], leaks = new double[Members], set_K = new double[Members], kg = new double[Members];
        ColdSim.Model.Rig plain = TwoNights.Rig;
        for (int i = 0; i < Members; i++)
        {
            ColdSim.Model.Rig rig = members.Of(i, drawn).Rig;
            loss[i] = Math.Log(rig.Coach!.HeatLoss.Sum(h => h.Conductance_W_K) / plain.Coach!.HeatLoss.Sum(h => h.Conductance_W_K));
            leaks[i] = drawn[(int)Uncertainty.Infiltration];
            set_K[i] = rig.Thermostat!.DaySetPoint_K - plain.Thermostat!.DaySetPoint_K;
            kg[i] = drawn[(int)Uncertainty.Contents];
        }

        foreach ((double[] off, double asked) in ((double[], double)[])[(loss, 0.15), (leaks, 0.4), (set_K, 1), (kg, 0.45359237)])
            Assert.Equal(asked, Math.Sqrt(off.Average(x => x * x)), 4 * asked / Math.Sqrt(2 * Members));
    }

    [Fact]
    public void No_cylinder_is_filled_over_its_legal_filling_or_below_nothing()
    {
        double[] drawn = new double[Enum.GetValues<Uncertainty>().Length];
        foreach (double fill in (double[])[1, 0.05])
        {
            ForecastMembers members = new(TwoNights with { Rig = TwoNights.Rig with { Cylinders = [Rigs.Bottle("20 lb", fill)] } }, 5);
            for (int i = 0; i < 500; i++)
            {
                ColdSim.Model.Cylinder.CylinderSpecification made = members.Of(i, drawn).Rig.Cylinders[0];
                Assert.InRange(made.Contents_kg, 0.01, made.LegalFill_kg);
            }
        }
    }

    [Fact]
    public void A_forecast_is_never_worse_than_the_season()
    {
        ErrorSizes usual = new();
        Assert.Equal(2, usual.TemperatureAt_K(24 * 3600), 9);
        Assert.Equal(2.4, usual.TemperatureAt_K(2 * 24 * 3600), 9);
        Assert.Equal(6, usual.TemperatureAt_K(30 * 24 * 3600), 9);
    }

    [Fact]
    public void The_first_of_many_members_are_those_of_few()
    {
        using CancellationTokenSource source = new();
        ChanceReport few = ChanceRun.Of(TwoNights, [], 12, 9), many = ChanceRun.Of(TwoNights, [], 24, 9, new StopsAfter(12, source), workers: 1, source.Token);
        Assert.Equal(12, many.Done);
        Assert.Equal(few.AllNights, many.AllNights);
        Assert.Equal(few.Fan, many.Fan);
        Assert.Equal(few.Influences, many.Influences);
    }

    private static WeatherSample At(WeatherSeries weather, int hour)
    {
        int row = 0;
        return weather.At((TwoNights.Start.AddHours(hour) - weather.First).TotalSeconds, ref row);
    }

    private sealed class StopsAfter(int members, CancellationTokenSource source) : IProgress<int>
    {
        public void Report(int value)
        {
            if (value == members)
                source.Cancel();
        }
    }
}
