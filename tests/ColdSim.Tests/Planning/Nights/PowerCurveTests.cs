using System.Globalization;
using ColdSim.Files.Results;
using ColdSim.Model;
using ColdSim.Model.Electrical;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Nights;

public class PowerCurveTests
{
    private static readonly BatterySpecification Bank = BatterySpecification.Of(BatteryChemistry.Agm, 100 * NominalVoltage.AmpereHour_J) with { InitialCharge_frac = 0.6 };

    private static readonly Lazy<RunReport> Run = new(() => ColdSim.Tests.Model.Rigs.Nights(
        Heated() with
        {
            Power = new PowerSpecification
            {
                Battery = Bank,
                Loads = [new ElectricLoad { Name = "lights", Power_W = 40, Hours = [new ClockWindow(18 * 3600, 22 * 3600)] }],
                Generator = new GeneratorSpecification { Rated_W = 1500, Hours = [new ClockWindow(8 * 3600, 20 * 3600)] },
            },
        },
        Steady(-8), 2));

    private static PowerSeries Power => Run.Value.Series.Power!;

    [Fact]
    public void Charge_starts_at_the_bank_s_initial_value_and_stays_in_range()
    {
        Assert.Equal(Bank.InitialCharge_frac, Power.Charge_frac[0]);
        Assert.All(Power.Charge_frac.Take(Run.Value.Series.Count), c => Assert.InRange(c, 0, 1));
    }

    [Fact]
    public void The_lowest_charge_of_each_night_is_the_lowest_of_its_curve()
    {
        foreach (NightReport night in Run.Value.Nights)
        {
            int from = (int)Math.Ceiling((night.From - Run.Value.Scenario.Start).TotalMinutes), to = (int)(night.To - Run.Value.Scenario.Start).TotalMinutes;
            Assert.Equal(night.Power!.ChargeLow.DecimalFractions, Power.Charge_frac[from..(to + 1)].Min(), 1e-3);
        }
    }

    [Fact]
    public void Power_curves_add_up_to_the_energies_of_the_nights()
    {
        double Sum_J(double[] curve_W) => curve_W.Take(Run.Value.Series.Count).Sum() * RunSeries.Spacing_s;
        double drawn_J = Run.Value.Nights.Sum(n => n.Power!.DrawnInAll.Joules), generator_J = Run.Value.Nights.Sum(n => n.Power!.Generator.Joules);
        Assert.True(generator_J > 0);
        Assert.Equal(drawn_J, Sum_J(Power.Drawn_W), 1e-6 * drawn_J);
        Assert.Equal(generator_J, Sum_J(Power.Generator_W), 1e-6 * generator_J);
        Assert.Equal(Sum_J(Power.Solar_W) + Sum_J(Power.Shore_W) + Sum_J(Power.Generator_W), Sum_J(Power.Given_W()), 1e-6 * generator_J);
    }

    [Fact]
    public void Charge_falls_by_at_least_the_energy_drawn_without_any_charging()
    {
        for (int i = 1; i < Run.Value.Series.Count; i++)
        {
            if (Power.Given_W()[i] > 0 || Power.Drawn_W[i] <= 0) continue;
            double fell_J = (Power.Charge_frac[i - 1] - Power.Charge_frac[i]) * Bank.Rated_J;
            Assert.True(fell_J >= Power.Drawn_W[i] * RunSeries.Spacing_s * (1 - 1e-9));
        }
    }

    [Fact]
    public void Series_csv_has_power_columns_only_with_a_battery()
    {
        string[] lines = Csv(Run.Value);
        string[] heads = lines[0].Split(','), row = lines[601].Split(',');
        int charge = Array.IndexOf(heads, "charge [%]");
        Assert.Equal(["charge [%]", "12 V drawn [W]", "solar [W]", "shore [W]", "generator [W]"], heads[charge..]);
        Assert.Equal(Math.Round(Power.Charge_frac[600] * 100, 2), double.Parse(row[charge], CultureInfo.InvariantCulture), 1e-9);
        Assert.Equal(Math.Round(Power.Drawn_W[600], 1), double.Parse(row[charge + 1], CultureInfo.InvariantCulture), 1e-9);
        RunReport without = ColdSim.Tests.Model.Rigs.Nights(Heated(), Steady(-8), 1);
        Assert.Null(without.Series.Power);
        Assert.DoesNotContain("12 V", Csv(without)[0], StringComparison.Ordinal);
    }

    private static string[] Csv(RunReport report)
    {
        using StringWriter output = new();
        SeriesCsv.Write(report, output);
        return output.ToString().Split('\n');
    }
}
