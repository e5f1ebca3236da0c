using ColdSim.Model.Engine;
using ColdSim.Physics.Mixtures;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>What became of a mixed gas in one cylinder over a night.</summary>
public sealed record BlendReport
{
    /// <summary>What it was made of at the first instant counted: parts by mass.</summary>
    public required GasMasses AtStart { get; init; }

    /// <summary>What it was made of at the last instant counted: parts by mass.</summary>
    public required GasMasses AtEnd { get; init; }

    /// <summary>Gas in it at the last instant counted.</summary>
    public required Mass Left { get; init; }

    /// <summary>Its own pressure at the last instant counted, gauge.</summary>
    public required Pressure PressureAtEnd { get; init; }

    /// <summary>
    /// Liquid that would stay unburnt at the night's coldest air: what is left when its pressure there no longer feeds every appliance in
    /// full; null where the regulator never passes what all appliances ask together.
    /// </summary>
    public required Mass? LeftBehind { get; init; }

    /// <summary>The air that <see cref="LeftBehind"/> is stated for.</summary>
    public required Temperature LeftBehindAt { get; init; }

    /// <summary>Gross heat of what went out of it. [J]</summary>
    internal double HeatUsed_J { get; init; }

    internal static IReadOnlyList<BlendReport> Of(NightTally t, Scenario scenario, RunSeries series)
        => [.. Enumerable.Range(0, scenario.Rig.Cylinders.Count).Select(i => Of(t, i, scenario, series))];

    private static BlendReport Of(NightTally t, int cylinder, Scenario scenario, RunSeries series)
    {
        CylinderReading first = t.EachAtStart[cylinder], last = t.EachAtEnd[cylinder];
        int sample = Math.Clamp((int)(t.To_s / RunSeries.Spacing_s) - series.FirstSample, 0, series.Count - 1);
        double behind_kg = series.Outlook!.LeftBehind_kg(series, sample, cylinder, t.OutsideLow_K);
        return new BlendReport
        {
            AtStart = first.Gas.Parts(),
            AtEnd = last.Gas.Parts(),
            Left = Mass.FromKilograms(last.Propane_kg),
            PressureAtEnd = Pressure.FromPascals(last.Pressure_Pa),
            LeftBehind = double.IsFinite(behind_kg) ? Mass.FromKilograms(behind_kg) : null,
            LeftBehindAt = Temperature.FromKelvins(t.OutsideLow_K),
            HeatUsed_J = scenario.Rig.Gas.Heat_factor * (GasBlend.Heat_J(first.Gas) - GasBlend.Heat_J(last.Gas)),
        };
    }
}
