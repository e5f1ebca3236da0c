using ColdSim.Model.Cylinder;
using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;
using ColdSim.Planning.Diagnosis;
using Xunit;

namespace ColdSim.Tests.Planning.Diagnosis;

public class DiagnosisReportTests
{
    private static readonly DiagnosisQuestion Fades = new DiagnosisQuestion().With(Sign.Stove, 2).With(Sign.Furnace, 4);

    [Fact]
    public void Nothing_is_ranked_where_nothing_was_seen()
    {
        DiagnosisQuestion cold = new() { Readings = new() { Air_K = 240 } };
        Assert.False(DiagnosisReport.Of(cold).HasAnswer);
        Assert.False(DiagnosisReport.Of(cold.With(Sign.Elevation, 3).With(Sign.Gas, 1)).HasAnswer);
        Assert.NotEmpty(DiagnosisReport.Of(cold).Tests);
    }

    [Fact]
    public void Nothing_is_ranked_in_an_emergency()
        => Assert.Empty(DiagnosisReport.Of(Fades with { Emergency = Emergency.GasSmell }).Causes);

    [Fact]
    public void Probabilities_add_up_to_one() => Assert.Equal(1, DiagnosisReport.Of(Fades).Causes.Sum(c => c.Probability_frac), 1e-9);

    // The same signs in the warmth cannot be a cold cylinder.
    [Fact]
    public void A_cylinder_in_warm_air_is_not_too_cold()
    {
        Assert.InRange(ChanceOf(Cause.TooCold, In(Fades, -22, 0.33)), 0.6, 1);
        Assert.InRange(ChanceOf(Cause.TooCold, In(Fades, 15, 0.8)), 0, 0.05);
    }

    [Fact]
    public void The_emptier_and_the_harder_drawn_a_cylinder_the_colder_it_is()
    {
        DiagnosisRig rig = new();
        double air_K = 255;
        double full_K = new CylinderExpectation(rig).Drawn_K(air_K, 1), low_K = new CylinderExpectation(rig).Drawn_K(air_K, 0.2);
        Assert.True(low_K < full_K && full_K < air_K);
        Assert.True(new CylinderExpectation(rig with { Use_frac = 0.9 }).Drawn_K(air_K, 1) < full_K);
        Assert.True(new CylinderExpectation(rig with { Cylinder = StandardSize.Find("100 lb")!.Full() }).Drawn_K(air_K, 1) > full_K);
    }

    [Fact]
    public void A_rested_cylinder_has_the_saturation_pressure_at_the_air()
    {
        CylinderState rested = new CylinderExpectation(new()).Of(CylinderFault.None, 255, 0.5, 250, 1);
        Assert.Equal(255, rested.Liquid_K, 1e-9);
        Assert.Equal(PropaneSaturation.Pressure_Pa(255) - ConversionFactors.StandardAtmosphere_Pa, rested.Pressure_Pa, 1);
    }

    [Fact]
    public void A_cylinder_that_is_too_cold_is_as_cold_as_where_the_furnace_fails()
    {
        CylinderExpectation model = new(new());
        CylinderState cold = model.Of(CylinderFault.TooCold, 255, 0.3, 200, 0);
        Assert.InRange(cold.Pressure_Pa, model.Least_Pa, model.Sure_Pa);
        Assert.Equal(5 * ConversionFactors.Psi_Pa, model.Sure_Pa, 1);
    }

    [Fact]
    public void High_up_a_cylinder_fails_in_colder_liquid()
        => Assert.True(new CylinderExpectation(new() { Elevation_m = 3000 }).Fails_K < new CylinderExpectation(new()).Fails_K - 2);

    [Fact]
    public void Butane_has_less_pressure_and_an_overfilled_cylinder_a_higher_level()
    {
        CylinderState[] seen = [.. DiagnosisReport.Of(In(Fades, -6, 0.5)).Expected];
        CylinderState Of(CylinderFault fault) => seen.Single(s => s.Fault == fault);
        Assert.True(Of(CylinderFault.ButaneLeft).Pressure_Pa < 0.5 * Of(CylinderFault.None).Pressure_Pa);
        Assert.True(Of(CylinderFault.Overfilled).Level_m > Of(CylinderFault.None).Level_m);
        Assert.Equal(0, Of(CylinderFault.Empty).Level_m);
    }

    [Fact]
    public void A_fan_that_stands_still_in_a_silent_furnace_says_nothing_more()
    {
        DiagnosisQuestion silent = new DiagnosisQuestion().With(Sign.Furnace, 0);
        Assert.Equal(ChanceOf(Cause.Lockout, silent), ChanceOf(Cause.Lockout, silent.With(Sign.Fan, 2)), 1e-12);
        Assert.NotEqual(ChanceOf(Cause.Lockout, silent), ChanceOf(Cause.Lockout, silent.With(Sign.Fan, 1)), 1e-3);
    }

    // Low voltage or a blocked return: the meter tells, weighing does not.
    [Fact]
    public void The_next_test_tells_the_first_two_causes_apart()
    {
        DiagnosisReport report = DiagnosisReport.Of(new DiagnosisQuestion().With(Sign.Furnace, 1).With(Sign.Stove, 0));
        Assert.Equal([Cause.LowVoltage, Cause.Airflow], report.Causes.Take(2).Select(c => c.Cause));
        Assert.True(report.Tests[0].Sign is Sign.Fan or Sign.Volts or Sign.Return);
        Assert.DoesNotContain(report.Tests, t => t.Reading == Reading.Left);
    }

    [Fact]
    public void What_was_looked_at_is_not_proposed_again()
        => Assert.DoesNotContain(DiagnosisReport.Of(Fades).Tests, t => t.Sign is Sign.Stove or Sign.Furnace);

    [Fact]
    public void Evidence_speaks_for_one_cause_and_against_another()
    {
        DiagnosisReport report = DiagnosisReport.Of(new DiagnosisQuestion().With(Sign.Volts, 0));
        Assert.True(report.Causes.Single(c => c.Cause == Cause.LowVoltage).Evidence[0].IsFor);
        Assert.True(report.Causes.Single(c => c.Cause == Cause.Empty).Evidence[0].IsAgainst);
    }

    [Theory]
    [InlineData(0.5, "even")]
    [InlineData(0.8, "4 to 1")]
    [InlineData(0.2, "1 to 4")]
    [InlineData(0.999, "over 50 to 1")]
    [InlineData(0.001, "under 1 to 50")]
    public void Odds_are_said_as_people_say_them(double p, string odds)
        => Assert.Equal(odds, DiagnosisFigures.OddsOf(new(Cause.Empty, p, [])));

    private static DiagnosisQuestion In(DiagnosisQuestion question, double air_C, double left_frac)
        => question with { Readings = new() { Air_K = air_C + ConversionFactors.ZeroCelsius_K, Left_frac = left_frac } };

    private static double ChanceOf(Cause cause, DiagnosisQuestion question)
        => DiagnosisReport.Of(question).Causes.Single(c => c.Cause == cause).Probability_frac;
}
