using System.Globalization;
using ColdSim.Files.Weather;
using ColdSim.Physics.Units;
using ColdSim.Planning.Climate;

namespace ColdSim.App.Text;

/// <summary>Cold nights and spells of a weather file in words and tables.</summary>
internal static class SpellText
{
    private static readonly CultureInfo Words = CultureInfo.InvariantCulture;

    /// <summary>The first sentence without its full stop; null where neither a night nor a spell was asked for.</summary>
    public static string? Verdict(WeatherFileReport weather, UnitStyle units) => weather switch
    {
        { Picked.Spell: { Nights: 1 } night }
            => $"NIGHT PICKED: {Day(night)}, down to {units.WholeTemperature(night.Low_K)} at {ClockText.Clock(night.LowAt)}, {Mean(night, units)}",
        { Picked.Spell: { } spell }
            => $"SPELL PICKED: {string.Create(Words, $"{spell.Nights} nights from {Day(spell)}")}, {Mean(spell, units)}, down to {units.WholeTemperature(spell.Low_K)}",
        { Coldest: { } coldest } => $"COLDEST {(coldest.Nights == 1 ? "NIGHT" : string.Create(Words, $"{coldest.Nights} NIGHTS"))}: "
            + $"{(coldest.Nights == 1 ? "" : "from ")}{Day(coldest.ByMean[0])}, {Mean(coldest.ByMean[0], units)}, down to {units.WholeTemperature(coldest.ByMean[0].Low_K)}",
        _ => null,
    };

    /// <summary>How rare it is, or which other spell has the coldest hour.</summary>
    public static string Meaning(WeatherFileReport weather, UnitStyle units)
    {
        if (weather.Picked is { } picked)
        {
            string missing = (weather.SpellNights.Any(n => n.Wind_m_s is null), weather.SpellNights.Any(n => n.Sun_J_m2 is null)) switch
            {
                (true, true) => " The file has neither wind nor sun for it.",
                (true, false) => " The file has no wind for it.",
                (false, true) => " The file has no sun for it.",
                _ => "",
            };
            return string.Create(Words, $"Rank {picked.Rank} of {picked.Of:#,0} by the mean: {picked.Rule}.{missing}");
        }

        ColdSpell mean = weather.Coldest!.ByMean[0], low = weather.Coldest.ByLow[0];
        return mean == low ? "The coldest hour falls into it too."
            : $"The coldest hour is in another one, from {Day(low)}: {units.WholeTemperature(low.Low_K)}, {Mean(low, units)}.";
    }

    /// <summary>What the curve is of, after "Air temperature".</summary>
    public static string Drawn(WeatherFileReport weather) => weather switch
    {
        { Picked.Spell.Nights: 1 } => " in the night picked",
        { Picked: not null } => " in the spell picked",
        { Coldest.Nights: 1 } => " in the coldest night",
        { Coldest: not null } => " in the coldest spell by mean",
        _ => "",
    };

    /// <summary>A row a night, under a heading.</summary>
    public static IReadOnlyList<string> Nights(IReadOnlyList<SpellNight> nights, UnitStyle units) => TextTable.Lines(
        [new(["Night"], Left: true), new(["mean"]), new(["low"]), new(["at"]), new(["wind"]), new(["sun, kWh/m²"])],
        [
            .. nights.Select(n => (IReadOnlyList<string>)
            [
                n.Night.Evening.ToString("ddd d MMM yyyy", Words), units.Temperature(n.Night.Mean_K), units.Temperature(n.Night.Low_K), ClockText.Clock(n.Night.LowAt),
                n.Wind_m_s is { } wind ? units.Speed(wind) : "-", n.Sun_J_m2 is { } sun ? UnitStyle.Number(sun / ConversionFactors.KilowattHour_J, 1) : "-",
            ]),
        ],
        gap: 3);

    /// <summary>Both lists side by side, under a heading.</summary>
    public static IReadOnlyList<string> Coldest(ColdestSpells coldest, UnitStyle units) => TextTable.Lines(
        [
            new(["By mean, from"], Left: true), new(["mean"]), new(["low"]),
            new(["  By lowest, from"], Left: true), new(["low"]), new(["mean"]),
        ],
        [
            .. coldest.ByMean.Zip(coldest.ByLow, (mean, low) => (IReadOnlyList<string>)
            [
                Day(mean), units.Temperature(mean.Mean_K), units.Temperature(mean.Low_K), "  " + Day(low), units.Temperature(low.Low_K), units.Temperature(low.Mean_K),
            ]),
        ],
        gap: 2);

    /// <summary>All that there is to say of the nights, below the answer; null where none were asked for.</summary>
    public static TextSection? Section(WeatherFileReport weather, UnitStyle units)
    {
        if (weather.SpellNights.Count == 0)
            return null;
        List<string> lines = [];
        if (weather.Picked is { Spell: { Nights: 1 } night })
        {
            lines.AddRange(Wrap.Lines($"The night of {night.Evening.ToString("dddd d MMMM yyyy", Words)}: mean {units.Temperature(night.Mean_K)} from noon to noon "
                + $"(UTC{InstantText.OfOffset(weather.Clock)}), lowest {units.Temperature(night.Low_K)} at {ClockText.Clock(night.LowAt)}."));
        }

        if (weather.Picked is { } picked)
            lines.AddRange(Wrap.Lines(string.Create(Words, $"Rank {picked.Rank} of {picked.Of:#,0} by that mean: {picked.Rule}.")));
        lines.AddRange(Nights(weather.SpellNights, units));
        string title = weather switch
        {
            { Picked.Spell.Nights: 1 } => "Night picked",
            { Picked: not null } => "Spell picked",
            { Coldest.Nights: 1 } => "Coldest night",
            _ => "Coldest spell by mean",
        };
        return new(title, lines);
    }

    private static string Day(ColdSpell spell) => spell.Evening.ToString("ddd d MMM yyyy", Words);

    private static string Mean(ColdSpell spell, UnitStyle units) => $"{units.WholeTemperature(spell.Mean_K)} in the mean";
}
