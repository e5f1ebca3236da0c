using ColdSim.Files.Quantities;
using ColdSim.Files.Toml;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[arrangement]</c>: how several cylinders are connected, and in which order they are used.</summary>
internal static class ArrangementSection
{
    private static readonly QuantityKey NoticedAfter = new("noticed_after", Dimension.Duration, "0 s", "24 h");
    private static readonly QuantityKey BetweenWalks = new("between_walks", Dimension.Duration, "0 s", "24 h");
    private static readonly QuantityKey ReserveSetting = new("reserve_setting", Dimension.Pressure, "5 kPa", "150 kPa");
    private static readonly QuantityKey ReserveDroop = new("reserve_droop", Dimension.Pressure, "0.5 kPa", "50 kPa");
    private static readonly QuantityKey MeetingTime = new("meeting_time", Dimension.Duration, "120 s", "2 h");

    private enum Kind
    {
        ByHand,
        Changeover,
        Together,
    }

    // Which keys go with which kind; another kind's would be silently without effect.
    private static readonly (string Key, Kind Kind)[] Belongs =
    [
        ("noticed_after", Kind.ByHand), ("between_walks", Kind.ByHand), ("nobody_gets_up", Kind.ByHand),
        ("reserve_setting", Kind.Changeover), ("reserve_droop", Kind.Changeover), ("meeting_time", Kind.Together),
    ];

    private static readonly (string Word, Kind Value)[] Words =
        [("by hand", Kind.ByHand), ("changeover", Kind.Changeover), ("together", Kind.Together)];

    /// <summary>The arrangement, and the cylinders in the order in which they are used.</summary>
    public static (CylinderArrangement Arrangement, IReadOnlyList<CylinderSpecification> Cylinders) Read(
        SectionReader section, IReadOnlyList<CylinderSpecification> cylinders)
    {
        Kind? written = section.Choice("kind", Words);
        Kind kind = written ?? Kind.ByHand;
        OneAtATime byHand = new();
        AutomaticChangeover changeover = new();
        OpenTogether together = new();
        byHand = byHand with
        {
            NoticedAfter_s = section.Get(NoticedAfter, byHand.NoticedAfter_s),
            BetweenWalks_s = section.Get(BetweenWalks, byHand.BetweenWalks_s),
            NobodyGetsUp = section.Spans("nobody_gets_up") ?? byHand.NobodyGetsUp,
        };
        changeover = changeover with
        {
            ReserveSetting_Pa = section.Get(ReserveSetting, changeover.ReserveSetting_Pa),
            ReserveDroop_Pa = section.Get(ReserveDroop, changeover.ReserveDroop_Pa),
        };
        together = together with { MeetingTime_s = section.Get(MeetingTime, together.MeetingTime_s) };
        IReadOnlyList<CylinderSpecification> ordered = Ordered(section, cylinders);
        section.Finish();
        foreach ((string key, Kind with) in Belongs)
        {
            if (section.Has(key) && with != kind)
                section.Report(key, $"'{key}' has no effect with kind = \"{WordOf(kind)}\"", $"accepted with kind = \"{WordOf(with)}\"");
        }
        if (changeover.ReserveDroop_Pa >= changeover.ReserveSetting_Pa)
            section.Report("reserve_droop", "the reserve side's droop is not below its setting");
        if (kind == Kind.Changeover && cylinders.Count is not (0 or 2))
            section.Report("kind", FormattableString.Invariant($"a changeover with {cylinders.Count} cylinder{(cylinders.Count == 1 ? "" : "s")}"), "accepted: two [[cylinder]]");
        if (kind == Kind.Together && cylinders.Count == 1)
            section.Report("kind", "one cylinder open together with no other", "accepted: two or more [[cylinder]]");
        if (cylinders.Count > 1 && !section.Has("kind"))
            section.Reading.Assume($"arrangement: kind not given, taken as one open at a time, changed by hand in the order written");
        if (cylinders.Count > 1 && kind == Kind.ByHand && !section.Has("noticed_after"))
            section.Reading.Assume($"arrangement: noticed_after not given, taken as {byHand.NoticedAfter_s / 60:0} min");
        if (kind == Kind.Changeover && !section.Has("reserve_setting"))
            section.Reading.Assume($"arrangement: reserve_setting not given, taken as {changeover.ReserveSetting_Pa / 6894.757293168361:0.#} psi between the stages");
        return (kind switch
        {
            Kind.Changeover => changeover,
            Kind.Together => together,
            _ => byHand,
        }, ordered);
    }

    private static string WordOf(Kind kind) => Words.First(w => w.Value == kind).Word;

    private static IReadOnlyList<CylinderSpecification> Ordered(SectionReader section, IReadOnlyList<CylinderSpecification> cylinders)
    {
        if (section.Value("order") is not { } value || cylinders.Count == 0)
            return cylinders;
        string accepted = "accepted: every cylinder once, by number or name, such as [2, 1]";
        if (value is not TomlList list)
        {
            section.Reading.Report(value.Place, $"'order' is {value.Kind}", accepted);
            return cylinders;
        }
        List<CylinderSpecification> ordered = [];
        foreach (TomlValue item in list.Items)
        {
            if (Find(cylinders, item) is { } found)
            {
                if (ordered.Contains(found))
                    section.Reading.Report(item.Place, "'order' names a cylinder twice", accepted);
                ordered.Add(found);
            }
            else
            {
                string names = string.Join(", ", cylinders.Select((c, i) => c.Label is { } l ? $"\"{l}\"" : FormattableString.Invariant($"{i + 1}")));
                section.Reading.Report(item.Place, "'order' names no such cylinder", "accepted: " + names);
            }
        }
        if (ordered.Count == cylinders.Count && ordered.Distinct().Count() == cylinders.Count)
            return ordered;
        if (ordered.Count < cylinders.Count)
            section.Report("order", "'order' leaves a cylinder out", accepted);
        return cylinders;
    }

    private static CylinderSpecification? Find(IReadOnlyList<CylinderSpecification> cylinders, TomlValue item) => item switch
    {
        TomlNumber { Whole: true } n when n.Value >= 1 && n.Value <= cylinders.Count => cylinders[(int)n.Value - 1],
        TomlText t => cylinders.FirstOrDefault(c => string.Equals(c.Label, t.Value.Trim(), StringComparison.OrdinalIgnoreCase)),
        _ => null,
    };
}
