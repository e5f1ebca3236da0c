using ColdSim.Planning.Gauges;

namespace ColdSim.App.Text;

/// <summary>What a cylinder's pressure tells, and plainly what it does not.</summary>
internal static class GaugePressureText
{
    public static IEnumerable<string> Sentences(GaugeReport report, PressureFinding finding, UnitStyle units)
    {
        yield return finding.Verdict switch
        {
            PressureVerdict.LiquidGone =>
                $"The liquid is gone: {units.Pressure(finding.Reading.Pascals)} is clearly below what liquid would keep up. "
                + $"{Vapour(report.Contents!.Mass.Kilograms, units)} of vapour is left, give or take {Vapour(report.Uncertainty!.Mass.Kilograms, units)}.",
            PressureVerdict.LighterGasOrAir =>
                "Cannot tell how much is left. The pressure is clearly above what this grade explains: lighter gas (ethane), or air left in the cylinder.",
            _ => "Cannot tell: neither how much is left nor whether there is liquid.",
        };
        yield return "";
        if (finding.LiquidTemperature is { } pure)
        {
            string ethane = finding.LiquidTemperatureWithEthane is { } lighter ? $", with 3 % ethane {units.Temperature(lighter.Kelvins)}" : "";
            yield return $"If there is liquid, its surface has {units.Temperature(pure.Kelvins)}{ethane}. That holds whether the cylinder is full or nearly empty: "
                + "while there is liquid, pressure says nothing about how much.";
        }

        if (finding is { ExpectedLow: { } low, ExpectedHigh: { } high })
        {
            yield return $"Liquid at {units.Temperature(report.Question.Temperature_K!.Value)}, as stated, would stand between "
                + $"{units.Pressure(low.Pascals)} and {units.Pressure(high.Pascals)}, its errors and the grade counted.";
        }

        if (finding.Verdict == PressureVerdict.CannotTell)
            yield return Why(report);
        if (finding.Verdict == PressureVerdict.LiquidGone)
            yield return "The same low pressure comes from what butane a long draw leaves behind; a scale decides.";
    }

    private static string Vapour(double kg, UnitStyle units) => $"{UnitStyle.Number(units.MassIn(kg), units.IsUs ? 2 : 3)} {units.MassUnit}";

    private static string Why(GaugeReport report) => report.Question switch
    {
        { Temperature_K: null } => "A judgement needs the liquid's temperature from something else (--temperature) and a cylinder at rest (--rested).",
        { Rested: false } => "A judgement needs a cylinder at rest (--rested): one that has just been drawn from is colder than the air, and low pressure then means cold.",
        _ => "The pressure is what liquid of that temperature may have.",
    };
}
