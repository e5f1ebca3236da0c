using ColdSim.Model.Coach;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.HeatLoss;
using UnitsNet;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>What a scenario comes to before it is run.</summary>
internal static class CheckText
{
    private const double UsPerSi = 1 / (BtuPerHour_W * 1.8);
    private const int LongestName = 52;

    public static IReadOnlyList<TextSection> Sections(Scenario scenario, UnitStyle units)
    {
        List<TextSection> sections =
        [
            new(scenario.Title, [.. Wrap.Lines(Setting(scenario, units)), .. Weather(scenario, units)]),
            new("Heat loss", HeatLoss(HeatLossBreakdown.Of(scenario), units)),
        ];
        if (scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(scenario.Assumptions, units)));
        sections.Add(new("Nothing is wrong with it", ["Run it with 'coldsim run'."]));
        return sections;
    }

    private static string Setting(Scenario scenario, UnitStyle units)
    {
        string nights = scenario.Trip is { } trip ? Stops(trip) : scenario.Nights switch
        {
            null => "To the end of the weather",
            1 => "1 night",
            { } n => $"{n} nights",
        };
        string furnace = scenario.Rig.Furnace is { } f ? $"; furnace of {units.Power(f.Input_W)}" : "; no furnace";
        return $"{nights} from {ClockText.Start(scenario.Start)}; {CylinderWords.All(scenario.Rig)} with "
            + $"{units.Mass(scenario.Rig.Cylinders.Sum(c => c.Contents_kg))} of {scenario.Rig.Gas.Name}, legally up to "
            + $"{units.Mass(scenario.Rig.Cylinders.Sum(c => c.LegalFill_kg))}{furnace}.";
    }

    private static string Stops(Trip trip)
    {
        string stops = trip.Stops.Count == 1 ? "1 stop" : $"{trip.Stops.Count} stops";
        string refills = trip.Refills.Count switch { 0 => "no refill", 1 => "1 refill", { } n => $"{n} refills" };
        return $"{stops} and {refills} until {ClockText.DayClock(trip.Stops[^1].To)},";
    }

    private static IEnumerable<string> Weather(Scenario scenario, UnitStyle units) => scenario.Trip is not { } trip || InOnePlace(trip, scenario)
        ? Wrap.Lines(Weather(scenario.Weather, units))
        : trip.Stops.SelectMany((s, i) => Wrap.Lines(
            $"{i + 1} {s.Name}, {ClockText.DayClock(s.From)} to {ClockText.DayClock(s.To)}, at its coldest there "
            + $"{units.Temperature(Coldest_K(s.Weather, s.From, s.To))}; its weather from {ClockText.DayClock(s.Weather.First)} to {ClockText.DayClock(s.Weather.Last)}.", rest: "  "));

    private static bool InOnePlace(Trip trip, Scenario scenario) => trip.Stops.Count == 1 && ReferenceEquals(trip.Stops[0].Weather, scenario.Weather);

    private static string Weather(WeatherSeries weather, UnitStyle units)
        => $"Weather from {ClockText.Start(weather.First)} to {ClockText.Start(weather.Last)}, "
            + $"at its coldest {units.Temperature(Coldest_K(weather, weather.First, weather.Last))}.";

    private static double Coldest_K(WeatherSeries weather, DateTimeOffset from, DateTimeOffset to)
    {
        double end_s = (to - weather.First).TotalSeconds, coldest_K = double.PositiveInfinity;
        int row = 0;
        for (double t_s = (from - weather.First).TotalSeconds; t_s <= end_s; t_s += Hour_s)
            coldest_K = Math.Min(coldest_K, weather.At(t_s, ref row).Air_K);
        return coldest_K;
    }

    /// <summary>Where the coach loses its heat, and what the furnace has against it.</summary>
    internal static IReadOnlyList<string> HeatLoss(HeatLossBreakdown? loss, UnitStyle units)
    {
        if (loss is null) return ["No coach: the cylinder stands alone."];
        List<IReadOnlyList<string>> rows = [.. loss.Items.Select(i => Row(i, loss.Total_W_K, units))];
        rows.Add(Row(new HeatLossItem("together", loss.Total_W_K), loss.Total_W_K, units));
        List<string> lines =
        [
            .. TextTable.Lines([new(["Part"], Left: true), new([units.IsUs ? "BTU/h per °F" : "W/K"]), new(["Share"])], rows, gap: 2),
        ];
        lines.AddRange(Wrap.Lines(AtTheColdest(loss, units)));
        if (!loss.HasInfiltration) lines.AddRange(Wrap.Lines("Draughts are taken as part of these numbers."));
        if (loss.FurnaceHeat is { } heat) lines.AddRange(Wrap.Lines(Against(loss, heat, units)));
        return lines;
    }

    private static string[] Row(HeatLossItem item, double total_W_K, UnitStyle units) =>
    [
        item.Name.Length <= LongestName ? item.Name : item.Name[..(LongestName - 3)] + "...",
        UnitStyle.Number(units.IsUs ? item.Conductance_W_K * UsPerSi : item.Conductance_W_K, 1),
        total_W_K > 0 ? $"{UnitStyle.Number(100 * item.Conductance_W_K / total_W_K, 0)} %" : "-",
    ];

    private static string AtTheColdest(HeatLossBreakdown loss, UnitStyle units)
        => $"At the coldest hour of the weather, {units.Temperature(loss.Outside.Kelvins)} with "
            + $"{units.Speed(loss.Wind.MetersPerSecond)} of wind and inside at {units.Temperature(loss.Inside.Kelvins)}, "
            + $"this is {units.Power((double)loss.Loss.Watts)}; people and things give {units.Power((double)loss.Gains.Watts)}.";

    private static string Against(HeatLossBreakdown loss, Power heat, UnitStyle units)
    {
        double share = (double)((loss.Loss.Watts - loss.Gains.Watts) / heat.Watts);
        string gives = $"The furnace gives at most {units.Power((double)heat.Watts)} at this altitude: ";
        return share > 1
            ? gives + "too little for that hour, even with all the gas it wants."
            : gives + $"it burns {UnitStyle.Number(100 * Math.Max(0, share), 0)} % of that hour.";
    }
}
