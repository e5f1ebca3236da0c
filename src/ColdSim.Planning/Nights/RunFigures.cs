using ColdSim.Model.Engine;
using ColdSim.Planning.Figures;
using UnitsNet.Units;
using Balance = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.LedgerReport>;
using Summary = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.RunSummary>;

namespace ColdSim.Planning.Nights;

/// <summary>What is reported of a whole run.</summary>
public static class RunFigures
{
    /// <summary>The run in one row; the same of a run, a trip and an option.</summary>
    public static IReadOnlyList<Summary> Summaries { get; } =
    [
        Summary.Word("verdict", s => s.Verdict, ReportWords.Verdicts, "the worst night's").InCsv(CsvTable.Compare, "verdict", order: 1),
        Summary.Count("nights", s => s.Nights, "nights counted").InCsv(CsvTable.Compare, "nights", order: 2),
        Summary.Count("nights_held", s => s.NightsHeld, "nights that held").InCsv(CsvTable.Compare, "nights held", order: 2),
        Summary.Time("first_short", s => s.FirstShort, "first undersupply of a night that did not hold", canBeAbsent: true).InCsv(CsvTable.Compare, "first short", order: 3),
        Summary.Quantity("short_time_s", s => s.ShortTime, DurationUnit.Second, "undersupply in all").InCsv(CsvTable.Compare, "short", 1, DurationUnit.Minute, order: 3),
        Summary.Time("dry_at", s => s.DryAt, "when the cylinder was dry", canBeAbsent: true).InCsv(CsvTable.Compare, "dry at", order: 3),
    ];

    /// <summary>How well energy and mass close.</summary>
    public static IReadOnlyList<Balance> Ledger { get; } =
    [
        Balance.Flag("closes", l => l.Balance.Closes, "whether all of it is within a millionth of what went through"),
        Balance.Number("energy_residual", l => l.Balance.WorstEnergy_frac, "the worst of the energy residuals, relative", exact: true),
        Balance.Number("mass_residual", l => l.Balance.Mass_frac, "mass, relative", exact: true),
        Balance.Number("cylinder_energy_residual", l => l.Balance.CylinderEnergy_frac, "cylinder, relative", exact: true),
        Balance.Number("coach_energy_residual", l => l.Balance.CoachEnergy_frac, "coach, relative", exact: true),
        Balance.Number("fuel_energy_residual", l => l.Balance.FuelEnergy_frac, "fuel, relative", exact: true),
        Balance.Number("cylinder_energy_j", l => l.Balance.CylinderEnergy_J, "cylinder", exact: true),
        Balance.Number("coach_energy_j", l => l.Balance.CoachEnergy_J, "coach", exact: true),
        Balance.Number("fuel_energy_j", l => l.Balance.FuelEnergy_J, "fuel", exact: true),
        Balance.Number("mass_kg", l => l.Balance.Mass_kg, "mass", exact: true),
        Balance.Number("electric_energy_residual", l => l.Balance.Electric_frac, "electricity, relative", exact: true),
        Balance.Number("electric_energy_j", l => l.Balance.Electric_J, "electricity", exact: true),
    ];
}

/// <summary>A ledger's balance as a row of figures.</summary>
/// <param name="Balance">The balance.</param>
public sealed record LedgerReport(LedgerBalance Balance);
