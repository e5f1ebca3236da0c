using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Gas;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Purchases;

/// <summary>A night of the record: how cold it was, and what the rig burned from noon to noon if it got all its gas. SI units.</summary>
/// <param name="Evening">The day on whose evening it begins.</param>
/// <param name="Low_K">Its low. [K]</param>
/// <param name="Used_kg">Gas used. [kg]</param>
public readonly record struct SeasonNight(DateOnly Evening, double Low_K, double Used_kg);

/// <summary>What a rig burns through a weather record, found by one run on a store of gas that never fails.</summary>
/// <param name="Nights">Night by night.</param>
/// <param name="Ledger">How well energy and mass close in that run.</param>
public sealed record SeasonUse(IReadOnlyList<SeasonNight> Nights, LedgerBalance Ledger)
{
    // A tank of 40 m³, three quarters of its legal filling: no winter empties or chills it.
    private const double Store_m3 = 40, StoreDiameter_m = 2.5, StoreWall_m = 0.012, StoreShell_kg = 9000, StoreFill_frac = 0.75;

    /// <summary>Runs the record.</summary>
    /// <param name="scenario">The rig and its weather.</param>
    /// <param name="cancel">Stops the run.</param>
    public static SeasonUse Of(Scenario scenario, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        double fill_kg = StandardSize.LegalFill_frac * 1000 * Store_m3;
        CylinderSpecification store = new()
        {
            Name = "store",
            Orientation = Orientation.Horizontal,
            Volume_m3 = Store_m3,
            OutsideDiameter_m = StoreDiameter_m,
            WallThickness_m = StoreWall_m,
            MetalMass_kg = StoreShell_kg,
            Tare_kg = StoreShell_kg,
            LegalFill_kg = fill_kg,
            Contents_kg = StoreFill_frac * fill_kg,
        };
        Rig rig = scenario.Rig with
        {
            Cylinders = [store],
            Arrangement = new OneAtATime(),
            Enclosure = null,
            Gas = new GasSpecification(),
            Power = null
        };
        RunReport run = NightRun.Of(
            scenario with { Rig = rig, Nights = null, Legs = [], Trip = null, HeatStops = null, StartedFrom = null, FilePlaces = [] },
            RunDetail.Answer, cancel);
        return new([.. run.Nights.Select(n => new SeasonNight(n.Evening, n.OutsideLow.Kelvins, n.GasUsed.Kilograms))], run.Ledger);
    }

    /// <summary>The low that a part of the nights is colder than. [K]</summary>
    /// <param name="colder_frac">The part.</param>
    public double Low_K(double colder_frac)
    {
        double[] lows = [.. Nights.Select(n => n.Low_K).Order()];
        return lows[Math.Clamp((int)Math.Round(colder_frac * (lows.Length - 1)), 0, lows.Length - 1)];
    }

    /// <summary>Gas used in a day with such a low: the straight line through the record's nights by least squares. [kg]</summary>
    /// <param name="low_K">The low. [K]</param>
    public double Day_kg(double low_K)
    {
        double meanLow_K = Nights.Average(n => n.Low_K), mean_kg = Nights.Average(n => n.Used_kg), both = 0, square = 0;
        foreach (SeasonNight night in Nights)
        {
            both += (night.Low_K - meanLow_K) * (night.Used_kg - mean_kg);
            square += (night.Low_K - meanLow_K) * (night.Low_K - meanLow_K);
        }

        return Math.Max(0, mean_kg + (square > 0 ? both / square : 0) * (low_K - meanLow_K));
    }
}
