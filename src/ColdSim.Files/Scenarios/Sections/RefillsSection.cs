using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Toml;
using ColdSim.Model.Cylinder;
using ColdSim.Planning.Trips;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>A refill as it was read.</summary>
/// <param name="Refill">The refill.</param>
/// <param name="AtPlace">Where its time stands.</param>
internal sealed record ReadRefill(Refill Refill, TextPlace AtPlace);

/// <summary><c>[[refill]]</c>: a cylinder filled or exchanged.</summary>
internal static class RefillsSection
{
    private const int Most = 100;

    // Such as 15 lb in a 20 lb cylinder; common practice, no source.
    private const double UsualExchange_frac = 0.75;

    private static readonly QuantityKey Amount = new("amount", Dimension.Mass, "0.1 kg", "500 kg");
    private static readonly QuantityKey ExchangeFill = new("exchange_fill", Dimension.Mass, "0.1 kg", "100 kg");
    private static readonly QuantityKey Supply = new("supply_temperature", Dimension.Temperature, "-40 °C", "40 °C");

    private static readonly (string Key, RefillKind Kind)[] Belongs =
        [("amount", RefillKind.Fill), ("limit", RefillKind.Fill), ("supply_temperature", RefillKind.Fill), ("exchange_fill", RefillKind.Exchange)];

    /// <summary>The refills in order of time; those that are faulty are left out.</summary>
    /// <param name="root">The top level.</param>
    /// <param name="written">The cylinders as written, which is how they are numbered.</param>
    /// <param name="cylinders">The same in the order in which they are used.</param>
    /// <param name="offset">The run's clock.</param>
    public static IReadOnlyList<ReadRefill> Read(
        SectionReader root, IReadOnlyList<CylinderSpecification> written, IReadOnlyList<CylinderSpecification> cylinders, TimeSpan offset)
    {
        IReadOnlyList<SectionReader> sections = root.Sections("refill");
        if (sections.Count > Most)
            root.Reading.Report(sections[Most].Place, FormattableString.Invariant($"{sections.Count} refills"), FormattableString.Invariant($"accepted: up to {Most}"));
        List<ReadRefill> refills = [];
        for (int i = 0; i < sections.Count; i++)
        {
            if (Read(sections[i], FormattableString.Invariant($"refill {i + 1}"), written, cylinders, offset) is { } refill)
                refills.Add(refill);
        }
        return [.. refills.OrderBy(r => r.Refill.At)];
    }

    private static ReadRefill? Read(
        SectionReader section, string called, IReadOnlyList<CylinderSpecification> written, IReadOnlyList<CylinderSpecification> cylinders, TimeSpan offset)
    {
        TimeOnly? time = section.Clock("time");
        if (!section.Has("at"))
            section.Lacks("at", "accepted: a date and time, without quotes, such as 2027-01-14T11:00:00, or a date with 'time'");
        DateTimeOffset? at = section.Moment("at", offset, time);
        if (section.Has("time") && section.Value("at") is TomlMoment { Time: true })
            section.Report("time", "'at' already says the time", "accepted: a date and time, or a date with 'time'");
        int? place = Cylinder(section, written, cylinders);
        RefillKind kind = section.Choice("kind", ("fill", RefillKind.Fill), ("exchange", RefillKind.Exchange)) ?? RefillKind.Fill;
        FillLimit? limit = section.Choice("limit", ("80 % of volume", FillLimit.Volume), ("42 % of water weight", FillLimit.Weight));
        double? asked_kg = section.Value("amount") is TomlText text && text.Value.Trim().Equals("full", StringComparison.OrdinalIgnoreCase) ? null : section.Get(Amount);
        double? supply_K = section.Get(Supply);
        double? exchange_kg = section.Get(ExchangeFill);
        Price? price = section.Price("price", each: true);
        string station = section.Text("station")?.Trim() ?? "";
        ClosedDays closed = Closed(section);
        section.Finish();
        foreach ((string key, RefillKind with) in Belongs)
        {
            if (section.Has(key) && kind != with)
                section.Report(key, $"'{key}' has no effect with kind = \"{Word(kind)}\"", $"accepted with kind = \"{Word(with)}\"");
        }
        if (price is { Each: true } && kind == RefillKind.Fill)
            section.Report("price", "a price per exchange for a filling", "accepted: a price per lb, kg, gal or L");
        if (at is { } when && closed.Has(DateOnly.FromDateTime(when.DateTime)))
            section.Report("at", $"the station is closed on {when.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture)}", "accepted: a day that 'closed' does not name");
        if (at is null || place is not { } index)
            return null;
        CylinderSpecification cylinder = cylinders[index];
        if (kind == RefillKind.Exchange)
            exchange_kg = CheckedExchange(section, cylinder, exchange_kg, called);
        else if (limit is null && !section.Has("limit"))
            section.Reading.Assume($"{called}: limit not given, taken as 80 % of volume");
        if (kind == RefillKind.Fill && supply_K is null && !section.Has("supply_temperature"))
            section.Reading.Assume($"{called}: supply_temperature not given, taken as the outside air's");
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
            section.PlaceOf("at"));
    }

    private static string Word(RefillKind kind) => kind == RefillKind.Fill ? "fill" : "exchange";

    private static double CheckedExchange(SectionReader section, CylinderSpecification cylinder, double? fill_kg, string called)
    {
        if (cylinder.Orientation == Orientation.Horizontal)
            section.Report("kind", "a tank that lies in its frame cannot be exchanged", "accepted: \"fill\"");
        if (fill_kg > cylinder.LegalFill_kg * 1.0001)
        {
            section.Report("exchange_fill", FormattableString.Invariant($"{fill_kg:0.##} kg is more than the legal filling of {cylinder.LegalFill_kg:0.##} kg"),
                FormattableString.Invariant($"accepted: up to {cylinder.LegalFill_kg:0.##} kg"));
        }
        if (fill_kg is { } given)
            return given;
        double usual_kg = UsualExchange_frac * cylinder.LegalFill_kg;
        if (!section.Has("exchange_fill"))
            section.Reading.Assume($"{called}: exchange_fill not given, taken as {usual_kg:0.##} kg ({usual_kg / 0.45359237:0.#} lb), three quarters of a full filling");
        return usual_kg;
    }

    // By the number as written or by name; arrangement.order may put it in another place.
    private static int? Cylinder(SectionReader section, IReadOnlyList<CylinderSpecification> written, IReadOnlyList<CylinderSpecification> cylinders)
    {
        TomlValue? value = section.Value("cylinder");
        if (written.Count == 0)
            return null;
        if (value is null)
        {
            if (written.Count == 1)
                return 0;
            section.Lacks("cylinder", Names(written));
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
        => "accepted: " + string.Join(", ", written.Select((c, i) => c.Label is { } l ? $"\"{l}\"" : FormattableString.Invariant($"{i + 1}")));

    private static ClosedDays Closed(SectionReader section)
    {
        if (section.Value("closed") is not { } value)
            return ClosedDays.None;
        List<DayOfWeek> weekly = [];
        List<DateOnly> days = [];
        foreach (TomlValue item in value is TomlList list ? list.Items : [value])
        {
            if (item is TomlMoment { Date: true, Time: false } day)
                days.Add(DateOnly.FromDateTime(day.Value.DateTime));
            else if (item is TomlText text && Weekday(text.Value.Trim()) is { } weekday)
                weekly.Add(weekday);
            else
                section.Reading.Report(item.Place, $"'closed' is {(item is TomlText bad ? $"\"{bad.Value}\"" : item.Kind)}", "accepted: days such as \"Sunday\", and dates such as 2027-01-18");
        }
        return new ClosedDays { Weekly = weekly, Days = days };
    }

    private static DayOfWeek? Weekday(string word)
    {
        for (DayOfWeek day = DayOfWeek.Sunday; day <= DayOfWeek.Saturday; day++)
        {
            if (CultureInfo.InvariantCulture.DateTimeFormat.GetDayName(day).Equals(word, StringComparison.OrdinalIgnoreCase))
                return day;
        }
        return null;
    }
}
