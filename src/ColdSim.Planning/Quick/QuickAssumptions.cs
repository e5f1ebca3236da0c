using System.Globalization;

namespace ColdSim.Planning.Quick;

/// <summary>Says in plain words, in both unit systems, what was taken because nobody said it.</summary>
internal static class QuickAssumptions
{
    public static IReadOnlyList<string> Of(QuickQuestion q)
    {
        List<string> taken = [];
        if (q.High_K is null)
            taken.Add($"afternoon high {Difference(QuickQuestion.Swing_K)} above the low");
        taken.Add("air falling in half a cosine from the high at 15:00 to the low at 07:00, and rising likewise");
        if (q.MastWind_m_s is null)
            taken.Add(Text($"wind {QuickQuestion.Wind_m_s / 0.44704:0} mph ({QuickQuestion.Wind_m_s:0.#} m/s)"));
        if (q.WindShelter_frac is null)
            taken.Add(Text($"cylinder sheltered to {100 * q.Cylinder.Surroundings.WindShelter_frac:0} % of that wind, seeing half the sky"));
        taken.Add("clear sky all night, 75 % relative humidity, no sun");
        if (q.CoachLength_m is null)
            taken.Add(Text($"coach {QuickQuestion.Length_m / 0.3048:0} ft ({QuickQuestion.Length_m:0.0} m) long"));
        taken.Add(HeatLoss(q.Grade ?? CoachGrade.Ordinary, q.Grade is null));
        if (q.SetPoint_K is null)
            taken.Add(Text($"thermostat at {QuickQuestion.Inside_K * 1.8 - 459.67:0} °F ({QuickQuestion.Inside_K - 273.15:0.0} °C) all night"));
        if (q.Elevation_m is null)
            taken.Add("sea level");
        taken.Add("cylinder and air equally cold at the start; coach warm, at the set point");
        taken.Add("somebody up from 06:30 to 22:30, who resets a locked-out furnace within 15 min; at night it tries again every hour");
        taken.Add("furnace 77 % efficient; nothing else uses gas; two-stage regulator, 160,000 BTU/h (47 kW)");
        return taken;
    }

    private static string HeatLoss(CoachGrade grade, bool taken)
    {
        double si = GradedCoach.HeatLoss_W_mK(grade);
        double us = si * 0.3048 / (0.29307107017222 * 1.8);
        string word = grade.ToString().ToLowerInvariant();
        return Text($"{(taken ? $"{word} coach" : $"{word} coach means")}: heat loss {us:0.0} BTU/h per °F per ft ({si:0} W/K per m), ")
            + "computed for typical builds, within 30 % either way";
    }

    private static string Difference(double kelvin) => Text($"{kelvin * 1.8:0} °F ({kelvin:0} °C)");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
