using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Model.Cylinder;
using ColdSim.Physics.Units;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>A refill as it was read.</summary>
/// <param name="Refill">The refill.</param>
/// <param name="AtPlace">Where its time is.</param>
internal sealed record ReadRefill(Refill Refill, TextPlace AtPlace);

/// <summary><c>[[refill]]</c>: a cylinder filled or exchanged.</summary>
internal static class RefillsSection
{
    private const int Most = 100;

    // Such as 15 lb in a 20 lb cylinder; common practice, no source.
    private const double UsualExchange_frac = 0.75;

    private static readonly DateTimeKey AtKey = new("at", DateTimeForm.DateWithTimeElsewhere, KeyDefault.Needed, "when")
    {
        Within = "within the stops or the road between them; no closed day",
    };

    private static readonly TimeKey Time = new("time", KeyDefault.None, "of a date alone");

    private static readonly ItemsKey CylinderKey = new(
        "cylinder", ItemForms.Whole | ItemForms.Text, KeyDefault.Of("the only one"), "which, counted as written")
    {
        IsSingle = true,
        Form = "number or name",
        Accepts = "one of the cylinders",
        Such = "1",
    };

    private static readonly ChoiceKey<RefillKind> Kind = new(
        "kind", RefillKind.Fill, "filled, or left there for another of its size", ("fill", RefillKind.Fill), ("exchange", RefillKind.Exchange));

    private static readonly QuantityKey Amount = new(
        "amount", Dimension.Mass, "0.1 kg", "500 kg", KeyDefault.Of("full"), "what is asked for; the limit still holds")
    { Words = ["full"] };

    private static readonly ChoiceKey<FillLimit> Limit = new(
        "limit", FillLimit.Volume, "where a filling stops: at a stop valve or gauge, or at `legal_fill` on a scale",
        ("80 % of volume", FillLimit.Volume), ("42 % of water weight", FillLimit.Weight))
    { Assumed = ScenarioKey.NotGiven };

    private static readonly QuantityKey Supply = new(
        "supply_temperature", Dimension.Temperature, "-40 °C", "40 °C", KeyDefault.Of("the outside air's"), "of the liquid that is pumped in")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey ExchangeFill = new(
        "exchange_fill", Dimension.Mass, "0.1 kg", "100 kg", KeyDefault.Of("three quarters of `legal_fill`"),
        "what comes in the exchange cylinder, which is as cold as the air")
    {
        Assumed = ScenarioKey.NotGiven + ", three quarters of a full filling",
    };

    private static readonly PriceKey PriceOf = new("price", each: true, KeyDefault.None, "`\"1.20 per lb\"`, `\"4.35 per gal\"`, or `\"24 per exchange\"`");

    private static readonly ItemsKey ClosedKey = new(
        "closed", ItemForms.Text | ItemForms.Date, KeyDefault.Of("open every day"), "when the station sells nothing: `[\"Sunday\", 2027-01-18]`")
    {
        IsList = true,
        IsSingle = true,
        Form = "list of days and dates",
        Such = "[\"Sunday\", 2027-01-18]",
    };

    private static readonly TextKey Station = new("station", KeyDefault.None, "where, for the report") { Such = "the village pump" };

    // Which keys go with which kind; another kind's would be silently without effect.
    private static readonly (ScenarioKey Key, RefillKind Kind)[] Belongs =
        [(Amount, RefillKind.Fill), (Limit, RefillKind.Fill), (Supply, RefillKind.Fill), (ExchangeFill, RefillKind.Exchange)];

    public static readonly ScenarioSection Declared = new(
        "refill", TableForm.Many, "a cylinder filled or exchanged",
        [AtKey, Time, CylinderKey, Kind, Amount, Limit, Supply, ExchangeFill, PriceOf, ClosedKey, Station])
    {
        Most = Most,
    };

    /// <summary>The refills in order of time; those that are faulty are left out.</summary>
    /// <param name="root">The top level.</param>
    /// <param name="written">The cylinders as written, which is how they are numbered.</param>
    /// <param name="cylinders">The same in the order in which they are used.</param>
    /// <param name="offset">The run's clock.</param>
    public static IReadOnlyList<ReadRefill> Read(
        SectionReader root, IReadOnlyList<CylinderSpecification> written, IReadOnlyList<CylinderSpecification> cylinders, TimeSpan offset)
    {
        IReadOnlyList<SectionReader> sections = root.Sections(Declared);
        if (sections.Count > Most)
            root.Reading.Report(sections[Most].Place, FormattableString.Invariant($"{sections.Count} refills"), FormattableString.Invariant($"accepted: up to {Most}"));
        List<ReadRefill> refills = [];
        for (int i = 0; i < sections.Count; i++)
        {
            if (Read(sections[i], FormattableString.Invariant($"refill {i + 1}"), written, cylinders, offset) is { } refill)
                refills.Add(refill);
        }
        return refills.Count < 2 ? refills : [.. refills.OrderBy(r => r.Refill.At)];
    }

    private static ReadRefill? Read(
        SectionReader section, string called, IReadOnlyList<CylinderSpecification> written, IReadOnlyList<CylinderSpecification> cylinders, TimeSpan offset)
    {
        TimeOnly? time = section.Get(Time);
        if (!section.Has(AtKey))
            section.Lacks(AtKey, "accepted: a date and time, without quotes, such as 2027-01-14T11:00:00, or a date with 'time'");
        DateTimeOffset? at = section.Get(AtKey, offset, time);
        if (section.Has(Time) && section.Value(AtKey) is TomlDateOrTime { HasTime: true })
            section.Report(Time, "'at' already says the time", "accepted: a date and time, or a date with 'time'");
        int? place = Cylinder(section, written, cylinders);
        RefillKind kind = section.GetOrDefault(Kind);
        FillLimit? limit = section.Get(Limit);
        double? asked_kg = section.Get(Amount);
        double? supply_K = section.Get(Supply);
        double? exchange_kg = section.Get(ExchangeFill);
        Price? price = section.Get(PriceOf);
        string station = section.Get(Station)?.Trim() ?? "";
        ClosedDays closed = Closed(section);
        section.Finish();
        foreach ((ScenarioKey key, RefillKind with) in Belongs)
        {
            if (section.Has(key) && kind != with)
                section.Report(key, $"'{key.Name}' has no effect with kind = \"{Kind.WordOf(kind)}\"", $"accepted with kind = \"{Kind.WordOf(with)}\"");
        }
        if (price is { Each: true } && kind == RefillKind.Fill)
            section.Report(PriceOf, "a price per exchange for a filling", "accepted: a price per lb, kg, gal or L");
        if (at is { } when && closed.Has(DateOnly.FromDateTime(when.DateTime)))
            section.Report(AtKey, $"the station is closed on {when.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture)}", "accepted: a day that 'closed' does not name");
        if (at is null || place is not { } index)
            return null;
        CylinderSpecification cylinder = cylinders[index];
        if (kind == RefillKind.Exchange)
            exchange_kg = CheckedExchange(section, cylinder, exchange_kg, called);
        else
        {
            section.Assume(Limit, called);
            section.Assume(Supply, called);
        }
        return new ReadRefill(
            new Refill
            {
                At = at.Value,
                Cylinder = index,
                Kind = kind,
                Station = station,
                Asked_kg = asked_kg,
                Limit = limit ?? FillLimit.Volume,
                Supply_K = supply_K,
                ExchangeFill_kg = exchange_kg ?? 0,
                Price = price,
                Closed = closed,
            },
            section.PlaceOf(AtKey));
    }

    private static double CheckedExchange(SectionReader section, CylinderSpecification cylinder, double? fill_kg, string called)
    {
        if (cylinder.Orientation == Orientation.Horizontal)
            section.Report(Kind, "a tank that lies in its frame cannot be exchanged", "accepted: \"fill\"");
        if (fill_kg > cylinder.LegalFill_kg * 1.0001)
        {
            section.Report(ExchangeFill, FormattableString.Invariant($"{fill_kg:0.##} kg is more than the legal filling of {cylinder.LegalFill_kg:0.##} kg"),
                FormattableString.Invariant($"accepted: up to {cylinder.LegalFill_kg:0.##} kg"));
        }
        if (fill_kg is { } given)
            return given;
        double usual_kg = UsualExchange_frac * cylinder.LegalFill_kg;
        section.Assume(ExchangeFill, called, $"{usual_kg:0.##} kg ({usual_kg / ConversionFactors.Pound_kg:0.#} lb)");
        return usual_kg;
    }

    // By the number as written or by name; arrangement.order may put it in another place.
    private static int? Cylinder(SectionReader section, IReadOnlyList<CylinderSpecification> written, IReadOnlyList<CylinderSpecification> cylinders)
    {
        TomlValue? value = section.Value(CylinderKey);
        if (written.Count == 0)
            return null;
        if (value is null)
        {
            if (written.Count == 1)
                return 0;
            section.Lacks(CylinderKey, Names(written));
            return null;
        }
        CylinderSpecification? found = value switch
        {
            TomlNumber { Whole: true } n when n.Value >= 1 && n.Value <= written.Count => written[(int)n.Value - 1],
            TomlText t => written.FirstOrDefault(c => string.Equals(c.Label, t.Value.Trim(), StringComparison.OrdinalIgnoreCase)),
            _ => null,
        };
        for (int i = 0; found is not null && i < cylinders.Count; i++)
        {
            if (ReferenceEquals(cylinders[i], found))
                return i;
        }
        section.Reading.Report(value.Place, "'cylinder' names no such cylinder", Names(written));
        return null;
    }

    private static string Names(IReadOnlyList<CylinderSpecification> written)
        => "accepted: " + string.Join(", ", written.Select((c, i) => c.Label is { } l ? $"\"{Quote.Of(l)}\"" : FormattableString.Invariant($"{i + 1}")));

    private static ClosedDays Closed(SectionReader section)
    {
        if (section.Value(ClosedKey) is not { } value)
            return ClosedDays.None;
        List<DayOfWeek> weekly = [];
        List<DateOnly> days = [];
        foreach (TomlValue item in value is TomlList list ? list.Items : [value])
        {
            if (item is TomlDateOrTime { HasDate: true, HasTime: false } day)
                days.Add(DateOnly.FromDateTime(day.Value.DateTime));
            else if (item is TomlText text && Weekday(text.Value.Trim()) is { } weekday)
                weekly.Add(weekday);
            else
                section.Reading.Report(item.Place, $"'closed' is {(item is TomlText bad ? $"\"{Quote.Of(bad.Value)}\"" : item.Kind)}", "accepted: days such as \"Sunday\" or \"Sun\", and dates such as 2027-01-18");
        }
        return new ClosedDays { Weekly = weekly, Days = days };
    }

    private static DayOfWeek? Weekday(string word)
    {
        for (DayOfWeek day = DayOfWeek.Sunday; day <= DayOfWeek.Saturday; day++)
        {
            string name = CultureInfo.InvariantCulture.DateTimeFormat.GetDayName(day);
            string given = word.TrimEnd('.');
            if (given.Length >= 3 && (name.StartsWith(given, StringComparison.OrdinalIgnoreCase) || (name + "s").Equals(given, StringComparison.OrdinalIgnoreCase)))
                return day;
        }
        return null;
    }
}
