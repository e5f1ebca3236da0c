using ColdSim.Model.Thermostat;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>What is said of a night that holds: the coldest, what is left, and by how much it holds.</summary>
internal static class HoldingSentence
{
    private const double NoticeablyBelow_K = 2;

    public static string Predicate(NightReport night, RunReport run, UnitStyle units)
        => $"{Verdict(night, run)}: {Inside(night, run, units)}, and {NightSentence.Left(night, run, units)}{Margin(night, units)}{Dip(night, run)}";

    // Of a coach without its furnace nobody says that the night holds; its gas does.
    private static string Verdict(NightReport night, RunReport run)
        => run.Scenario.HeatStops is not { } stops || stops >= night.To ? "holds"
            : stops > night.From ? $"has gas enough, but no furnace from {ClockText.Clock(stops)}"
            : "has gas enough, but no furnace";

    private static string Inside(NightReport night, RunReport run, UnitStyle units)
    {
        string outside = $"outside falls to {NightSentence.Temperature(night.OutsideLow, units)}";
        if (night.InsideLow is not { } low || night.InsideLowAt is not { } at)
            return outside;
        string inside = NightSentence.Temperature(low, units);
        return IsBelowThermostat(low, run.Scenario.Rig.Thermostat)
            ? $"{outside}, every appliance gets its gas, yet inside is down to {inside} at {ClockText.Clock(at)}, "
                + "colder than the thermostat asks"
            : $"{outside}, inside stays at {inside} or above";
    }

    private static bool IsBelowThermostat(Temperature low, ThermostatSpecification? thermostat)
        => thermostat is not null
            && low.Kelvins < Math.Min(thermostat.DaySetPoint_K, thermostat.NightSetPoint_K) - NoticeablyBelow_K;

    /// <summary>A steady supply is only told with the liquid temperature that it allows.</summary>
    private static string Margin(NightReport night, UnitStyle units)
    {
        double asked_W = (double)night.DemandAtLow.Watts, steady_W = (double)night.SteadySupplyAtLow.Watts;
        if (night.GasUsed.Kilograms <= 0)
            return "; nothing asks for gas";
        if (asked_W <= 0)
            return "";
        string asked = $"; at the coldest hour {units.Power(asked_W)} is asked and";
        string liquid = night.AllowedLiquid is { } allowed
            ? $"with its liquid at {NightSentence.Temperature(allowed, units)}"
            : "through this regulator, all appliances at once";
        return steady_W >= asked_W
            ? $"{asked} the cylinder could keep giving {units.Power(steady_W)} {liquid}"
            : $"{asked} the cylinder could keep giving only {units.Power(steady_W)} {liquid}, "
                + "so it lives on warmth stored in the liquid";
    }

    private static string Dip(NightReport night, RunReport run) => night.FirstShort is { } first
        ? $"; supply dips first at {ClockText.Clock(first)}, {ClockText.Span(night.ShortTime)} in all, "
            + $"within the {ClockText.Span(run.Scenario.Criteria.ShortAllowance)} that counts as holding"
        : "";
}
