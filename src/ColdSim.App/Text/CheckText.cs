using ColdSim.Model.Coach;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.HeatLoss;
using UnitsNet;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>What a scenario comes to before it is run, beside what its answer says.</summary>
internal static class CheckText
{
    private const double UsPerSi = 1 / (BtuPerHour_W * 1.8);
    private const int LongestName = 52;

    /// <summary>What goes below the answer, which has the setting, the parts of the heat loss and what was assumed already.</summary>
    public static IReadOnlyList<TextSection> Sections(Scenario scenario, UnitStyle units)
    {
        List<TextSection> sections = [];
        if (scenario.Trip is { } trip && !InOnePlace(trip, scenario))
            sections.Add(new("Where it stops", [.. Stops(trip, units)]));
        if (HeatLossBreakdown.Of(scenario) is { } loss)
            sections.Add(new("At the coldest hour", Wrap.Lines(AtTheColdest(loss, units))));
        return sections;
    }

    /// <summary>What is run, from when, with how much gas.</summary>
    internal static string Setting(Scenario scenario, UnitStyle units)
    {
        string nights = scenario.Trip is { } trip ? Stops(trip) : scenario.Nights switch
        {
            null => "To the end of the weather",
            1 => "1 night",
            { } n => $"{n} nights",
        };
        string furnace = scenario.Rig.Furnace is { } f ? $"; furnace of {units.Power(f.Input_W)}" : "; no furnace";
        return $"{nights} from {ClockText.Start(scenario.Start)}; {CylinderWords.All(scenario.Rig)} with "
            + $"{units.Mass(scenario.Rig.Cylinders.Sum(c => c.Contents_kg))} of {scenario.Rig.Gas.Name}, of at most "
            + $"{units.Mass(scenario.Rig.Cylinders.Sum(c => c.LegalFill_kg))}{furnace}.";
    }

    private static string Stops(Trip trip)
    {
        string stops = trip.Stops.Count == 1 ? "1 stop" : $"{trip.Stops.Count} stops";
        string refills = trip.Refills.Count switch { 0 => "no refill", 1 => "1 refill", { } n => $"{n} refills" };
        return $"{stops} and {refills} until {ClockText.DayClock(trip.Stops[^1].To)},";
    }

    private static IEnumerable<string> Stops(Trip trip, UnitStyle units) => trip.Stops.SelectMany((s, i) => Wrap.Lines(
        $"{i + 1} {s.Name}, {ClockText.DayClock(s.From)} to {ClockText.DayClock(s.To)}, at its coldest "
        + $"{units.WholeTemperature(Coldest_K(s.Weather, s.From, s.To))}; weather from {ClockText.DayClock(s.Weather.First)} to {ClockText.DayClock(s.Weather.Last)}.",
        rest: "  "));

    private static bool InOnePlace(Trip trip, Scenario scenario) => trip.Stops.Count == 1 && ReferenceEquals(trip.Stops[0].Weather, scenario.Weather);

    /// <summary>From when to when the weather goes, and how cold it gets.</summary>
    internal static string Weather(Scenario scenario, UnitStyle units)
    {
        if (scenario.Trip is { } trip && !InOnePlace(trip, scenario))
        {
            (TripStop stop, double low_K) = trip.Stops.Select(s => (s, Coldest_K(s.Weather, s.From, s.To))).MinBy(s => s.Item2);
            return $"Its coldest stop is {stop.Name}, down to {units.WholeTemperature(low_K)}.";
        }

        WeatherSeries weather = scenario.Weather;
        return $"Weather from {ClockText.DayOfYear(weather.First)} to {ClockText.DayOfYear(weather.Last)}, "
            + $"down to {units.WholeTemperature(Coldest_K(weather, weather.First, weather.Last))}.";
    }

    private static double Coldest_K(WeatherSeries weather, DateTimeOffset from, DateTimeOffset to)
    {
        double end_s = (to - weather.First).TotalSeconds, coldest_K = double.PositiveInfinity;
        int row = 0;
        for (double t_s = (from - weather.First).TotalSeconds; t_s <= end_s; t_s += Hour_s)
            coldest_K = Math.Min(coldest_K, weather.At(t_s, ref row).Air_K);
        return coldest_K;
    }

    /// <summary>The parts through which the coach loses its heat, a row each, and all together last.</summary>
    internal static IReadOnlyList<string> HeatLoss(HeatLossBreakdown loss, UnitStyle units)
    {
        List<IReadOnlyList<string>> rows = [.. loss.Items.Select(i => Row(i, loss.Total_W_K, units))];
        rows.Add(Row(new HeatLossItem("together", loss.Total_W_K), loss.Total_W_K, units));
        return TextTable.Lines([new(["Heat is lost by"], Left: true), new([units.IsUs ? "BTU/h per °F" : "W/K"]), new(["Share"])], rows, gap: 2);
    }

    private static string[] Row(HeatLossItem item, double total_W_K, UnitStyle units) =>
    [
        item.Name.Length <= LongestName ? item.Name : item.Name[..(LongestName - 3)] + "...",
        UnitStyle.Number(units.IsUs ? item.Conductance_W_K * UsPerSi : item.Conductance_W_K, 1),
        total_W_K > 0 ? $"{UnitStyle.Number(100 * item.Conductance_W_K / total_W_K, 0)} %" : "-",
    ];

    private static string AtTheColdest(HeatLossBreakdown loss, UnitStyle units)
        => $"It is {units.WholeTemperature(loss.Outside.Kelvins)} with {units.Speed(loss.Wind.MetersPerSecond)} of wind, and inside is to be at "
            + $"{units.WholeTemperature(loss.Inside.Kelvins)}: the coach loses {units.Power((double)loss.Loss.Watts)}, people and things give "
            + $"{units.Power((double)loss.Gains.Watts)}.{(loss.HasInfiltration ? "" : " Draughts are in these numbers already.")}";

    /// <summary>Whether there is a furnace, and it gives less than the coldest hour takes.</summary>
    internal static bool IsTooSmall(HeatLossBreakdown loss) => loss.FurnaceHeat is { } heat && Share(loss, heat) > 1;

    private static double Share(HeatLossBreakdown loss, Power heat) => (double)((loss.Loss.Watts - loss.Gains.Watts) / heat.Watts);

    /// <summary>How much of the coldest hour the furnace burns, or that it is too small; null without a furnace.</summary>
    internal static string? Against(HeatLossBreakdown loss, UnitStyle units)
    {
        if (loss.FurnaceHeat is not { } heat)
            return null;
        string gives = $"At the coldest hour the furnace gives at most {units.Power((double)heat.Watts)} at this height: ";
        return IsTooSmall(loss)
            ? gives + "too little, even with all the gas it needs."
            : gives + $"it burns {UnitStyle.Number(100 * Math.Max(0, Share(loss, heat)), 0)} % of that hour.";
    }
}
