using ColdSim.Model.Engine;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Ensemble;

/// <summary>The chance that a scenario holds, by many runs of it.</summary>
public sealed record ChanceReport
{
    /// <summary>The question.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The run without errors.</summary>
    public required RunReport Plain { get; init; }

    /// <summary>Members that were asked for.</summary>
    public required int Asked { get; init; }

    /// <summary>Members that are in here; fewer than asked for where it was interrupted.</summary>
    public required int Done { get; init; }

    /// <summary>What the random numbers start from; null where the members are years.</summary>
    public required int? Seed { get; init; }

    /// <summary>The years that the members are; empty for an ensemble of errors.</summary>
    public required IReadOnlyList<int> Years { get; init; }

    /// <summary>The years of the record that could not be run, in order; empty for an ensemble of errors.</summary>
    public IReadOnlyList<YearLeftOut> YearsLeftOut { get; init; } = [];

    /// <summary>Members that hold all nights.</summary>
    public required Proportion AllNights { get; init; }

    /// <summary>Night by night.</summary>
    public required IReadOnlyList<NightChance> Nights { get; init; }

    /// <summary>When it is dry, counted over all members; an end that lies past the run is null.</summary>
    public required Spread<DateTimeOffset?> Dry { get; init; }

    /// <summary>Members that run dry.</summary>
    public required Proportion RunsDry { get; init; }

    /// <summary>What matters, the most first; empty where nothing differs.</summary>
    public required IReadOnlyList<Influence> Influences { get; init; }

    /// <summary>The scenario's options, in its order.</summary>
    public required IReadOnlyList<OptionChance> Options { get; init; }

    /// <summary>Hour by hour.</summary>
    public required IReadOnlyList<FanPoint> Fan { get; init; }

    /// <summary>How well energy and mass close in the worst of all members.</summary>
    public required LedgerBalance Ledger { get; init; }

    /// <summary>Whether it was interrupted.</summary>
    public bool IsPartial => Done < Asked;

    /// <summary>Whether the scenario as it is has the chance that is wanted.</summary>
    public bool AsWanted => AllNights.Chance_frac >= Scenario.WantedChance_frac;

    /// <summary>The cheapest option with the chance that is wanted; where none of those has a price, the first; null where there is none.</summary>
    public OptionChance? Cheapest => Options.Where(o => o.AllNights.Chance_frac >= Scenario.WantedChance_frac)
        .OrderBy(o => o.Cost ?? double.PositiveInfinity).FirstOrDefault();
}

/// <summary>The chance of one night.</summary>
/// <param name="Night">The night of the run without errors.</param>
/// <param name="Holds">Members in which it holds.</param>
/// <param name="LeftAtDawn_kg">Propane left at dawn; null where the run does not reach it. [kg]</param>
public sealed record NightChance(NightReport Night, Proportion Holds, Spread<double>? LeftAtDawn_kg);

/// <summary>How much something that is not known decides how it goes.</summary>
/// <param name="Of">What is not known.</param>
/// <param name="Correlation">Spearman's rank correlation with how well it goes.</param>
/// <param name="Share_frac">Its square, as a part of the sum of all squares.</param>
public sealed record Influence(Uncertainty Of, double Correlation, double Share_frac);

/// <summary>The chance of an option, with the scenario's own random numbers.</summary>
/// <param name="Option">The option.</param>
/// <param name="AllNights">Members in which all nights hold.</param>
/// <param name="Cost">What it costs in the run without errors, as in a comparison; null where nothing has a price.</param>
public sealed record OptionChance(ComparedOption Option, Proportion AllNights, double? Cost);
