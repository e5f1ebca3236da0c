using ColdSim.Model.Weather;
using ColdSim.Physics.Units;
using ColdSim.Planning.Figures;
using UnitsNet.Units;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Files.Weather.WeatherFileReport>;
using Gap = ColdSim.Planning.Figures.Figure<ColdSim.Files.Weather.WeatherGap>;
using Hour = ColdSim.Planning.Figures.Figure<ColdSim.Files.Weather.ColdHour>;
using Listed = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Climate.ColdSpell>;
using Lists = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Climate.ColdestSpells>;
using Night = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Climate.SpellNight>;
using Picked = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Climate.DesignSpell>;
using Station = ColdSim.Planning.Figures.Figure<ColdSim.Files.Weather.WeatherStation>;
using Threshold = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Climate.WeatherDigest>;

namespace ColdSim.Files.Weather;

/// <summary>What is reported of a weather file.</summary>
internal static class WeatherFigures
{
    private static IReadOnlyList<Station> Stations { get; } =
    [
        Station.Text("id", s => s.Id, "number or code", canBeAbsent: true),
        Station.Text("name", s => s.Name, "name", canBeAbsent: true),
        Station.Number("latitude_deg", s => s.Latitude_deg, "north positive", canBeAbsent: true),
        Station.Number("longitude_deg", s => s.Longitude_deg, "east positive", canBeAbsent: true),
        Station.Number("elevation_m", s => s.Elevation_m, "above the sea", canBeAbsent: true),
        Station.Text("offset", s => s.Offset is { } offset ? InstantText.OfOffset(offset) : null, "its clock's offset from UTC", canBeAbsent: true),
        Station.Time("issued", s => s.Issued, "when a forecast was issued", canBeAbsent: true),
    ];

    private static IReadOnlyList<Hour> ColdestHours { get; } =
    [
        Hour.Time("time", h => h.Row.Time, "when"),
        Hour.Quantity("air_c", h => SiQuantity.Temperature(h.Row.Air_K), TemperatureUnit.DegreeCelsius, "air temperature"),
        Hour.Number("wind_m_s", h => h.Row.Wind_m_s, "wind at mast height", canBeAbsent: true),
    ];

    private static IReadOnlyList<Threshold> Below { get; } =
    [
        Threshold.Quantity("threshold_c", d => SiQuantity.Temperature(d.Below_K), TemperatureUnit.DegreeCelsius, "`--below`"),
        Threshold.Number("hours", d => d.HoursBelow, "hours below it"),
        Threshold.Number("degree_hours_kh", d => d.DegreeHours_Kh, "kelvins below it times hours"),
        Threshold.Time("longest_from", d => d.LongestRun?.From, "the longest run below it begins", canBeAbsent: true),
        Threshold.Time("longest_to", d => d.LongestRun?.To, "and ends", canBeAbsent: true),
        Threshold.Quantity("longest_low_c", d => SiQuantity.Temperature(d.LongestRun?.Low_K), TemperatureUnit.DegreeCelsius, "its lowest", canBeAbsent: true),
    ];

    private static IReadOnlyList<Gap> Gaps { get; } =
    [
        Gap.Time("from", g => g.From, "the row before"),
        Gap.Time("to", g => g.To, "the row after"),
        Gap.Text("bridged_by", _ => "straight_line", "`straight_line`"),
    ];

    private static IReadOnlyList<Picked> Nights { get; } =
    [
        Picked.Text("rule", n => n.Rule, "how it was picked"),
        Picked.Count("rank", n => n.Rank, "1 for the coldest"),
        Picked.Count("of", n => n.Of, "of how many nights, or of how many winters' coldest"),
        Picked.Time("night_from", n => n.Spell.From, "noon before"),
        Picked.Time("night_to", n => n.Spell.To, "noon after"),
        Picked.Quantity("night_mean_c", n => SiQuantity.Temperature(n.Spell.Mean_K), TemperatureUnit.DegreeCelsius, "mean air temperature between the two"),
        Picked.Quantity("night_low_c", n => SiQuantity.Temperature(n.Spell.Low_K), TemperatureUnit.DegreeCelsius, "lowest"),
        Picked.Time("night_low_at", n => n.Spell.LowAt, "when that was"),
    ];

    private static IReadOnlyList<Listed> Spells { get; } =
    [
        Listed.Time("from", s => s.From, "noon before its first night"),
        Listed.Time("to", s => s.To, "noon after its last night"),
        Listed.Quantity("mean_c", s => SiQuantity.Temperature(s.Mean_K), TemperatureUnit.DegreeCelsius, "mean air temperature between the two"),
        Listed.Quantity("low_c", s => SiQuantity.Temperature(s.Low_K), TemperatureUnit.DegreeCelsius, "lowest"),
        Listed.Time("low_at", s => s.LowAt, "when that was"),
    ];

    private static IReadOnlyList<Picked> PickedSpells { get; } =
    [
        Picked.Text("rule", n => n.Rule, "how it was picked"),
        Picked.Count("rank", n => n.Rank, "1 for the coldest"),
        Picked.Count("of", n => n.Of, "of how many spells, or of how many winters' coldest"),
        Picked.Count("nights", n => n.Spell.Nights, "how many nights it has"),
        Picked.Group("spell", n => n.Spell, Spells, "when it is and how cold"),
    ];

    private static IReadOnlyList<Lists> ColdestSpells { get; } =
    [
        Lists.Count("nights", l => l.Nights, "how many nights each has"),
        Lists.Rows("by_mean", l => l.ByMean, Spells, "the coldest in the mean first, none sharing a night with another, at most five"),
        Lists.Rows("by_low", l => l.ByLow, Spells, "the one with the coldest hour first, likewise"),
    ];

    private static IReadOnlyList<Night> SpellNights { get; } =
    [
        Night.Day("evening", n => n.Night.Evening, "the day on whose evening it begins"),
        Night.Quantity("mean_c", n => SiQuantity.Temperature(n.Night.Mean_K), TemperatureUnit.DegreeCelsius, "mean air temperature from noon to noon"),
        Night.Quantity("low_c", n => SiQuantity.Temperature(n.Night.Low_K), TemperatureUnit.DegreeCelsius, "lowest"),
        Night.Time("low_at", n => n.Night.LowAt, "when that was"),
        Night.Number("wind_m_s", n => n.Wind_m_s, "mean wind", canBeAbsent: true),
        Night.Number("sun_kwh_m2", n => n.Sun_J_m2 / ConversionFactors.KilowattHour_J, "sun on level ground from noon to noon", canBeAbsent: true),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Text("file", a => a.File, "as it was named"),
        Document.Text("format", a => a.Weather.Format.Name(), $"the layout it was read as: {string.Join(", ", Enum.GetValues<WeatherFormat>().Select(f => $"`{f.Name()}`"))}"),
        Document.Text("times", a => a.Weather.Clock, "how its times were understood"),
        Document.Group("station", a => a.Weather.Station, Stations, "what the file says of where it is from; null for what it does not"),
        Document.Time("from", a => a.Digest.From, "first row"),
        Document.Time("to", a => a.Digest.To, "last row"),
        Document.Count("rows", a => a.Digest.Rows, "rows in the window"),
        Document.Quantity("mean_c", a => SiQuantity.Temperature(a.Digest.Mean_K), TemperatureUnit.DegreeCelsius, "mean air temperature over time"),
        Document.Quantity("high_c", a => SiQuantity.Temperature(a.Digest.High_K), TemperatureUnit.DegreeCelsius, "highest"),
        Document.Rows("coldest", a => a.Digest.Coldest.Select(r => new ColdHour(r)), ColdestHours, "the coldest rows, one from noon to noon, coldest first, at most five"),
        Document.Group("below", a => a.Digest, Below, "time below the threshold"),
        Document.Number("gaps_in_all", a => a.Weather.AllGaps, "how many gaps there are"),
        Document.Rows("gaps", a => a.Weather.Gaps, Gaps, "spans without rows, in order of time; of more than a thousand the longest thousand"),
        Document.Group("night", a => a.Picked is { Spell.Nights: 1 } night ? night : null, Nights, "the night picked with `--night`", canBeAbsent: true),
        Document.Group("picked_spell", a => a.Picked is { Spell.Nights: > 1 } spell ? spell : null, PickedSpells, "the spell picked with `--spell`", canBeAbsent: true),
        Document.Group("coldest_spells", a => a.Coldest, ColdestSpells, "what `--coldest` found", canBeAbsent: true),
        Document.Rows("spell_nights", a => a.SpellNights, SpellNights, "each night of what was picked, or of the coldest spell by mean; empty where nothing was asked for"),
        Document.Texts("notes", a => a.Notes, "what was done to the weather on the way"),
    ];
}

/// <summary>A cold row of a weather file as a row of figures.</summary>
internal sealed record ColdHour(WeatherRow Row);
