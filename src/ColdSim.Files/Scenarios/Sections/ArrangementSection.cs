using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[arrangement]</c>: how several cylinders are connected, and in which order they are used.</summary>
internal static class ArrangementSection
{
    private enum Kind
    {
        ByHand,
        Changeover,
        Together,
    }

    private static readonly OneAtATime UsualByHand = new();
    private static readonly AutomaticChangeover UsualChangeover = new();

    private static readonly ChoiceKey<Kind> KindKey = new(
        "kind", Kind.ByHand, "one open at a time; two on an automatic changeover; all valves open on one manifold",
        ("by hand", Kind.ByHand), ("changeover", Kind.Changeover), ("together", Kind.Together))
    {
        Assumed = "arrangement: kind not given; assumed one open at a time, changed {value} in the order written",
    };

    private static readonly ItemsKey Order = new(
        "order", ItemForms.Whole | ItemForms.Text, KeyDefault.Of("as written"),
        "in which order they are used; the first is the open one, or the service side")
    {
        IsList = true,
        Form = "list of numbers or names",
        Accepts = "every cylinder once",
        Such = "[2, 1]",
    };

    private static readonly QuantityKey NoticedAfter = new(
        "noticed_after", Dimension.Duration, "0 s", "24 h", KeyDefault.Of(UsualByHand.NoticedAfter_s, "min"),
        "by hand: gas short for so long, somebody is at the cylinders")
    { Assumed = ScenarioKey.NotGiven };

    private static readonly QuantityKey BetweenWalks = new(
        "between_walks", Dimension.Duration, "0 s", "24 h", KeyDefault.Of(UsualByHand.BetweenWalks_s, "h"),
        "by hand: how long a cylinder just opened is given before somebody walks out again");

    private static readonly SpansKey NobodyGetsUp = new(
        "nobody_gets_up", KeyDefault.None, "by hand: hours in which nobody walks out; the change waits for their end");

    private static readonly QuantityKey ReserveSetting = new(
        "reserve_setting", Dimension.Pressure, "5 kPa", "150 kPa", KeyDefault.Of(UsualChangeover.ReserveSetting_Pa, "psi"),
        "changeover: pressure between the stages that the reserve side holds")
    { Assumed = ScenarioKey.NotGiven + " between the stages" };

    private static readonly QuantityKey ReserveDroop = new(
        "reserve_droop", Dimension.Pressure, "0.5 kPa", "50 kPa", KeyDefault.Of(UsualChangeover.ReserveDroop_Pa, "psi"),
        "changeover: rise from there to shut, fall to wide open");

    private static readonly QuantityKey MeetingTime = new(
        "meeting_time", Dimension.Duration, "120 s", "2 h", KeyDefault.Of(new OpenTogether().MeetingTime_s, "min"),
        "together: time constant with which pressures that differ meet");

    // Which keys go with which kind; another kind's would be silently without effect.
    private static readonly (ScenarioKey Key, Kind Kind)[] Belongs =
    [
        (NoticedAfter, Kind.ByHand), (BetweenWalks, Kind.ByHand), (NobodyGetsUp, Kind.ByHand),
        (ReserveSetting, Kind.Changeover), (ReserveDroop, Kind.Changeover), (MeetingTime, Kind.Together),
    ];

    public static readonly ScenarioSection Declared = new(
        "arrangement", TableForm.One, "how several cylinders are connected, and in which order they are used",
        [KindKey, Order, NoticedAfter, BetweenWalks, NobodyGetsUp, ReserveSetting, ReserveDroop, MeetingTime]);

    /// <summary>The arrangement, and the cylinders in the order in which they are used.</summary>
    public static (CylinderArrangement Arrangement, IReadOnlyList<CylinderSpecification> Cylinders) Read(
        SectionReader section, IReadOnlyList<CylinderSpecification> cylinders)
    {
        Kind kind = section.GetOrDefault(KindKey);
        OneAtATime byHand = new()
        {
            NoticedAfter_s = section.GetOrDefault(NoticedAfter),
            BetweenWalks_s = section.GetOrDefault(BetweenWalks),
            NobodyGetsUp = section.Get(NobodyGetsUp) ?? UsualByHand.NobodyGetsUp,
        };
        AutomaticChangeover changeover = new()
        {
            ReserveSetting_Pa = section.GetOrDefault(ReserveSetting),
            ReserveDroop_Pa = section.GetOrDefault(ReserveDroop),
        };
        OpenTogether together = new() { MeetingTime_s = section.GetOrDefault(MeetingTime) };
        IReadOnlyList<CylinderSpecification> ordered = Ordered(section, cylinders);
        section.Finish();
        CheckKind(section, kind, cylinders.Count);
        if (changeover.ReserveDroop_Pa >= changeover.ReserveSetting_Pa)
            section.Report(ReserveDroop, "the reserve side's droop is not below its setting");
        if (cylinders.Count > 1)
            section.Assume(KindKey, "arrangement");
        if (cylinders.Count > 1 && kind == Kind.ByHand)
            section.Assume(NoticedAfter, "arrangement");
        if (kind == Kind.Changeover)
            section.Assume(ReserveSetting, "arrangement");
        return (kind switch
        {
            Kind.Changeover => changeover,
            Kind.Together => together,
            _ => byHand,
        }, ordered);
    }

    private static void CheckKind(SectionReader section, Kind kind, int cylinders)
    {
        foreach ((ScenarioKey key, Kind with) in Belongs)
        {
            if (section.Has(key) && with != kind)
                section.Report(key, $"'{key.Name}' has no effect with kind = \"{KindKey.WordOf(kind)}\"", $"accepted with kind = \"{KindKey.WordOf(with)}\"");
        }
        if (kind == Kind.Changeover && cylinders is not (0 or 2))
            section.Report(KindKey, FormattableString.Invariant($"a changeover with {cylinders} cylinder{(cylinders == 1 ? "" : "s")}"), "accepted: two [[cylinder]]");
        if (kind == Kind.Together && cylinders == 1)
            section.Report(KindKey, "one cylinder open together with no other", "accepted: two or more [[cylinder]]");
    }

    private static IReadOnlyList<CylinderSpecification> Ordered(SectionReader section, IReadOnlyList<CylinderSpecification> cylinders)
    {
        if (section.Value(Order) is not { } value || cylinders.Count == 0)
            return cylinders;
        string accepted = "accepted: every cylinder once, by number or name, such as [2, 1]";
        if (value is not TomlList list)
        {
            section.Reading.Report(value.Place, $"'order' is {value.Kind}", accepted);
            return cylinders;
        }
        List<int> ordered = [];
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
                string names = string.Join(", ", cylinders.Select((c, i) => c.Label is { } l ? $"\"{Quote.Of(l)}\"" : FormattableString.Invariant($"{i + 1}")));
                section.Reading.Report(item.Place, "'order' names no such cylinder", "accepted: " + names);
            }
        }
        if (ordered.Count < cylinders.Count)
            section.Report(Order, "'order' leaves a cylinder out", accepted);
        return ordered.Count == cylinders.Count ? [.. ordered.Select(i => cylinders[i])] : cylinders;
    }

    private static int? Find(IReadOnlyList<CylinderSpecification> cylinders, TomlValue item)
    {
        for (int i = 0; i < cylinders.Count; i++)
        {
            bool meant = item switch
            {
                TomlNumber { Whole: true } n => n.Value == i + 1,
                TomlText t => string.Equals(cylinders[i].Label, t.Value.Trim(), StringComparison.OrdinalIgnoreCase),
                _ => false,
            };
            if (meant)
                return i;
        }
        return null;
    }
}
