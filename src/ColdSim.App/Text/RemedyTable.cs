using ColdSim.Model.Electrical;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Harms;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>What would have held: the least of each remedy, to which tolerance, and what goes with it.</summary>
internal static class RemedyTable
{
    private const int NoteWidth = 30, NameWidth = 21;

    // Half of a 100 Ah lead battery at 12 V a night; common practice, no source.
    private const double BatteryNight_J = 600 * 3600;

    public static IReadOnlyList<string> Lines(Explanation explanation, UnitStyle units) => TextTable.Lines(
        [new(["What"], Left: true), new(["Least"], Left: true), new(["Within"]), new(["Note"], Left: true)],
        [.. explanation.Remedies.SelectMany(r => Rows(r, explanation, units))]);

    private static IEnumerable<IReadOnlyList<string>> Rows(Remedy remedy, Explanation explanation, UnitStyle units)
    {
        IReadOnlyList<string> name = Wrap.Lines(Name(remedy), NameWidth);
        IReadOnlyList<string> least = remedy.Value is null ? ["nothing", "within reach"] : [Value(remedy.Kind, remedy.Value.Value, remedy, units)];
        IReadOnlyList<string> note = Wrap.Lines(string.Join("; ", Notes(remedy, explanation, units)), NoteWidth);
        for (int i = 0; i < Math.Max(name.Count, Math.Max(least.Count, note.Count)); i++)
        {
            yield return
            [
                name.ElementAtOrDefault(i) ?? "",
                least.ElementAtOrDefault(i) ?? "",
                i == 0 && remedy.Value is not null ? Tolerance(remedy, units) : "",
                note.ElementAtOrDefault(i) ?? "",
            ];
        }
    }

    /// <summary>A remedy of the 12 V side that holds, in a few words.</summary>
    public static string Short(Remedy remedy) => remedy.Kind switch
    {
        RemedyKind.Battery => $"a battery of {AmpereHours(remedy.Value!.Value)}",
        RemedyKind.MorePanels => $"{Watts(remedy.Value!.Value)} more of solar panels",
        RemedyKind.Generator => $"a {Name(remedy)}",
        _ => Name(remedy),
    };

    private static string Name(Remedy remedy) => remedy.Kind switch
    {
        RemedyKind.ApplianceOff or RemedyKind.LoadOff => $"{remedy.Name} off",
        RemedyKind.Generator => $"generator of {Watts(remedy.Reach)}",
        _ => ExplainFigures.RemedyKinds[remedy.Kind].Text,
    };

    private static string Value(RemedyKind kind, double value, Remedy remedy, UnitStyle units) => kind switch
    {
        RemedyKind.Blanket => $"{UnitStyle.Number(value, 0)} W",
        RemedyKind.Fill => $"{UnitStyle.Number(value * 100, 1)} % full",
        RemedyKind.Size => remedy.Name ?? "",
        RemedyKind.NightSetPoint => units.IsUs ? $"{UnitStyle.Number(units.TemperatureIn(value), 1)} °F" : units.Temperature(value),
        RemedyKind.Regulator => units.Power(value),
        RemedyKind.Battery => AmpereHours(value),
        RemedyKind.MorePanels => Watts(value),
        _ => "holds",
    };

    private static string Tolerance(Remedy remedy, UnitStyle units) => remedy.Kind switch
    {
        RemedyKind.Blanket => $"{UnitStyle.Number(remedy.Tolerance, 0)} W",
        RemedyKind.Fill => $"{UnitStyle.Number(remedy.Tolerance * 100, 0)} %",
        RemedyKind.Size => "one size",
        RemedyKind.NightSetPoint => units.Difference(remedy.Tolerance),
        RemedyKind.Regulator => units.Power(remedy.Tolerance),
        RemedyKind.Battery => AmpereHours(remedy.Tolerance),
        RemedyKind.MorePanels => Watts(remedy.Tolerance),
        _ => "",
    };

    private static string Watts(double value_W) => $"{UnitStyle.Number(value_W, 0)} W";

    private static string AmpereHours(double value_J) => $"{UnitStyle.Number(value_J / NominalVoltage.AmpereHour_J, 0)} Ah";

    // Of one blanket; every cylinder has the same.
    private static string Hours(Remedy remedy, Explanation explanation)
        => UnitStyle.Number(remedy.Electricity_J / remedy.Value!.Value / explanation.Report.Scenario.Rig.Cylinders.Count / 3600, 0);

    // Why a remedy does not hold with the furthest value tried.
    private static string? Fails(Remedy remedy)
    {
        if (remedy.FailsBy == Verdict.Holds || remedy.FailsAt is not { } at)
            return null;
        string length = remedy.FailsBy is Verdict.GasShort or Verdict.GasGone && remedy.Harm.ShortMinutes >= 1
            ? $", for {ClockText.Span(Duration.FromMinutes(remedy.Harm.ShortMinutes))} in all" : "";
        return $"{VerdictWords.Clause(remedy.FailsBy)} {ClockText.DayClock(at)}{length}";
    }

    private static IEnumerable<string> Notes(Remedy remedy, Explanation explanation, UnitStyle units)
    {
        bool several = explanation.Report.Scenario.Rig.Cylinders.Count > 1;
        if (remedy.Value is null)
        {
            yield return remedy.Kind switch
            {
                RemedyKind.Blanket => $"up to {UnitStyle.Number(remedy.Reach, 0)} W{(several ? " on each" : "")}",
                RemedyKind.Fill => "not even legally full",
                RemedyKind.Size => $"up to {remedy.Name}, as full",
                RemedyKind.NightSetPoint => $"down to {units.Temperature(remedy.Reach)}",
                RemedyKind.Regulator => $"up to {units.Power(remedy.Reach)}",
                RemedyKind.Battery => $"up to {AmpereHours(remedy.Reach)}",
                RemedyKind.MorePanels => $"up to {Watts(remedy.Reach)} beside what is there",
                RemedyKind.Generator => "on the same cylinders",
                RemedyKind.PurePropane or RemedyKind.ApplianceOff or RemedyKind.PanelsClear or RemedyKind.LoadOff or RemedyKind.ShorePower => "does not hold",
                _ => "same size, as full",
            };
            if (Fails(remedy) is { } fails)
                yield return fails;
            yield break;
        }

        switch (remedy.Kind)
        {
            case RemedyKind.Blanket:
                if (several)
                    yield return "on each";
                yield return $"{UnitStyle.Number(remedy.Value.Value, 0)} W × {Hours(remedy, explanation)} h = {UnitStyle.Number(remedy.Electricity_J / 3600, 0)} Wh"
                    + (remedy.Electricity_J <= BatteryNight_J * explanation.Night ? "" : ", more than a battery gives: needs shore power"
                        + (explanation.Report.Scenario.Rig.Site.Hookup ? "" : ", and there is none"));
                break;
            case RemedyKind.Fill:
                yield return $"{units.Mass(remedy.Contents_kg)} of {CylinderWords.Gas(explanation.Report.Scenario.Rig)}";
                break;
            case RemedyKind.PurePropane:
                yield return $"{units.Mass(remedy.Contents_kg)} of it, no butane";
                break;
            case RemedyKind.Size:
                yield return $"as full: {units.Mass(remedy.Contents_kg)}";
                break;
            case RemedyKind.SecondOpen or RemedyKind.SecondChangeover:
                yield return "same size, as full";
                break;
            case RemedyKind.Regulator:
                yield return "fitted by a technician";
                break;
            case RemedyKind.Battery:
                yield return "of the same kind, in its place";
                break;
            case RemedyKind.MorePanels:
                yield return "beside what is there, clear of snow";
                break;
            case RemedyKind.Generator:
                yield return "on the same cylinders, outside only";
                break;
        }

        if (remedy.IsOnGround)
            yield return "stands on the ground";
        if (!remedy.HoldsAllNights)
            yield return "a later night still fails";
    }
}
