using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Quick;
using ColdSim.Tests.Model;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Freezing;

/// <summary>Cooling down against the simple hourly method of ISO 13790 (annex C: five resistances, one capacity) at the same losses.</summary>
public class SimpleHourlyMethodTests
{
    private const double Floor_m2 = 16.8, Inside_C = 20, Outside_C = -10;

    // The class "very light": 80 kJ/K and 2.5 m² of mass surface per m² of floor; 9.1 and 3.45 W/(m²·K), 4.5 m² of all surfaces per m² of floor.
    private const double Mass_J_K = 80e3 * Floor_m2, Mass_m2 = 2.5 * Floor_m2, All_m2 = 4.5 * Floor_m2, ToMass_W_m2K = 9.1, ToSurface_W_m2K = 3.45;

    // Air by the hour without heat. All losses are the air's, as ours are, so that air, surfaces and mass are equally warm before.
    private static double[] Hourly_C(double loss_W_K, int hours)
    {
        double ms = ToMass_W_m2K * Mass_m2, si = ToSurface_W_m2K * All_m2, h1 = 1 / (1 / loss_W_K + 1 / si), h3 = 1 / (1 / h1 + 1 / ms);
        double mass_C = Inside_C;
        double[] air_C = new double[hours + 1];
        for (int h = 1; h <= hours; h++)
        {
            double next_C = (mass_C * (Mass_J_K / 3600 - 0.5 * h3) + h3 * Outside_C) / (Mass_J_K / 3600 + 0.5 * h3);
            double surface_C = (ms * 0.5 * (mass_C + next_C) + h1 * Outside_C) / (ms + h1);
            (air_C[h], mass_C) = ((si * surface_C + loss_W_K * Outside_C) / (si + loss_W_K), next_C);
        }

        return air_C;
    }

    // Mean of each hour, as the hourly method has it, for the coach and for all corners of its range.
    private static (double Least, double Most) Ours_C(CoachSpecification coach, int hour)
    {
        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        foreach ((double, double) corner in StorageUncertainty.Corners)
        {
            Rig rig = new() { Cylinders = [BigTank()], Coach = StorageUncertainty.At(coach, corner) with { InitialTemperature_K = Inside_C + Zero_K } };
            Trace run = Run(rig, Steady(Outside_C), hour, step_s: 60);
            double sum = 0, time_s = 0;
            foreach (StepRecord step in run.Steps.Where(s => s.From.Time_s >= (hour - 1) * 3600 - 1e-6))
            {
                double length_s = step.To.Time_s - step.From.Time_s;
                sum += 0.5 * (step.From.Inside_K + step.To.Inside_K) * length_s;
                time_s += length_s;
            }

            (least, most) = (Math.Min(least, sum / time_s - Zero_K), Math.Max(most, sum / time_s - Zero_K));
        }

        return (least, most);
    }

    [Theory]
    [InlineData(CoachGrade.Good)]
    [InlineData(CoachGrade.Ordinary)]
    [InlineData(CoachGrade.Leaky)]
    [Outside("ISO 13790, simple hourly method", Field.Coach)]
    public void From_the_second_hour_on_the_hourly_method_lies_in_our_range(CoachGrade grade)
    {
        CoachSpecification coach = GradedCoach.Of(grade, 7);
        double[] hourly_C = Hourly_C(coach.HeatLoss[0].Conductance_W_K, 8);
        for (int hour = 2; hour <= 8; hour++)
        {
            (double least_C, double most_C) = Ours_C(coach, hour);
            Assert.True(hourly_C[hour] >= least_C && hourly_C[hour] <= most_C, $"{grade}, hour {hour}: {hourly_C[hour]:0.0} not in {least_C:0.0} to {most_C:0.0}");
        }
    }
}
