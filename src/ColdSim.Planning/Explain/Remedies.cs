using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Gas;
using ColdSim.Physics.Units;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Search;

namespace ColdSim.Planning.Explain;

/// <summary>What would have held, each least value found by running the whole engine.</summary>
/// <remarks>
/// "Held" is every night up to the one explained; whether the rest of the run holds too is reported separately. Nothing is offered that is not
/// sold and listed for the purpose, nor more than the legal filling, nor more than two cylinders to carry.
/// </remarks>
public static class Remedies
{
    // Ends of reach that are common practice, no source: blankets by size of cylinder, two-stage regulators for coaches.
    private const double SmallBlanket_W = 150, LargeBlanket_W = 400, BlanketStep_W = 5;
    private const double LargestRegulator_W = 400_000 * ConversionFactors.BtuPerHour_W, RegulatorStep_W = 5_000 * ConversionFactors.BtuPerHour_W;
    private const double SmallBlanketTo_m3 = 0.033;
    private const double FillStep_frac = 0.01;

    // Colder than this inside, pipes and people are the matter, not gas.
    private const double LowestSetPoint_K = 278.15, SetPointStep_K = 0.5;

    /// <summary>The upright standard sizes that are sold where this rig's cylinders are, small to large.</summary>
    public static IReadOnlyList<StandardSize> SizesFor(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return StandardSize.Uprights(metric: rig.Cylinders.All(c => c.Name.EndsWith(" kg", StringComparison.Ordinal)));
    }

    /// <summary>Tries all that the rig has room for.</summary>
    /// <param name="scenario">A scenario that does not hold.</param>
    /// <param name="night">The night explained, from 1.</param>
    /// <param name="cause">What failed it: gas, battery and furnace have remedies of their own.</param>
    /// <param name="finished">Called after every run; may be called from several threads at once.</param>
    /// <param name="workers">How many at once; null takes one for each processor.</param>
    /// <param name="cancel">Stops all runs.</param>
    public static IReadOnlyList<Remedy> Of(
        Scenario scenario, int night, Verdict cause, Action? finished = null, int? workers = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        Scenario toNight = ToNight(scenario, night);
        RemedyRange[] ranges = [.. Against(cause, scenario)];
        return ParallelMap.Of(ranges.Length, i => Try(ranges[i], scenario, toNight, finished, cancel), workers, cancel);
    }

    /// <summary>The scenario up to a night's end; a run in legs is always run whole.</summary>
    public static Scenario ToNight(Scenario scenario, int night)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return scenario.Legs.Count > 0 ? scenario : scenario with { Nights = Math.Min(night, scenario.Nights ?? int.MaxValue) };
    }

    /// <summary>The scenario with a value of a remedy, for whoever wants to run it again.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="kind">The remedy.</param>
    /// <param name="value">Its value.</param>
    /// <param name="name">Where there are several of a kind, the one's name.</param>
    public static Scenario With(Scenario scenario, RemedyKind kind, double value, string? name = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        RemedyRange[] ranges = [.. OfGas(scenario).Concat(ElectricalRemedies.Ranges(scenario)).Where(r => r.Kind == kind)];
        return ranges.First(r => ranges.Length == 1 || r.Name?.Invoke(value) == name).Build(scenario, value);
    }

    private static Remedy Try(RemedyRange range, Scenario scenario, Scenario toNight, Action? finished, CancellationToken cancel)
    {
        Dictionary<double, TrialOutcome> known = [];
        TrialOutcome Run(Scenario tried, bool toTheEnd = false)
        {
            TrialOutcome run = toTheEnd ? TrialOutcome.Of(tried, cancel) : TrialOutcome.WhileItHolds(tried, cancel);
            finished?.Invoke();
            return run;
        }

        // The end of reach is run to its end, so that a remedy that fails can say from what. The unchanged scenario does not hold; otherwise there would be nothing to explain.
        LeastFound? found = SmallestThatHolds.Find(
            range.From, range.To, range.Tolerance, v => v != range.From && (known[v] = Run(range.Build(toNight, v), v == range.To)).Holds);
        Remedy remedy = new(range.Kind, found?.Value, range.Tolerance, range.To) { Name = range.Name?.Invoke(found?.Value ?? range.To) };
        if (found is null)
        {
            TrialOutcome last = known[range.To];
            return remedy with { FailsBy = last.Verdict, FailsAt = last.FirstFailure, Harm = last.Harm };
        }

        Scenario whole = range.Build(scenario, found.Value);
        TrialOutcome at = known[found.Value];
        return remedy with
        {
            Scenario = whole,
            HoldsAllNights = toNight.Nights == whole.Nights ? at.Holds : Run(whole).Holds,
            IsOnGround = new ComparedOption("", whole).IsOnGround,
            Contents_kg = whole.Rig.Cylinders.Sum(c => c.Contents_kg),
            Electricity_J = at.Blanket_J,
        };
    }

    // The furnace's fan draws less in a cooler night. Nothing here mends a furnace that stopped, or warms a pipe that nothing heats.
    private static IEnumerable<RemedyRange> Against(Verdict cause, Scenario scenario) => cause switch
    {
        Verdict.BatteryFlat => ElectricalRemedies.Ranges(scenario).Concat(OfGas(scenario).Where(r => r.Kind == RemedyKind.NightSetPoint)),
        Verdict.FurnaceTooSmall => OfGas(scenario).Where(r => r.Kind == RemedyKind.NightSetPoint),
        Verdict.FurnaceStopped or Verdict.WaterFreezes => [],
        _ => OfGas(scenario),
    };

    private static IEnumerable<RemedyRange> OfGas(Scenario scenario)
    {
        Rig rig = scenario.Rig;
        double worn_W = rig.Cylinders.Min(c => c.Blanket?.Power_W ?? 0);
        double mostBlanket_W = rig.Cylinders.Max(c => c.Volume_m3) <= SmallBlanketTo_m3 ? SmallBlanket_W : LargeBlanket_W;
        if (worn_W < mostBlanket_W)
            yield return new(RemedyKind.Blanket, worn_W, mostBlanket_W, BlanketStep_W, (s, v) => Each(s, c => Under(c, v)));
        double full = rig.Cylinders.Min(SizeSweep.Fill_frac);
        if (full < 1)
            yield return new(RemedyKind.Fill, full, 1, FillStep_frac, (s, v) => Each(s, c => c with { Contents_kg = Math.Max(c.Contents_kg, v * c.LegalFill_kg) }));
        if (rig.Gas.IsMixed)
            yield return new(RemedyKind.PurePropane, 0, 1, 1, (s, _) => OfPropane(s));

        // Frame tanks are built in, and no size or second one takes their place.
        bool portable = rig.Cylinders.All(c => c.Orientation == Orientation.Upright);
        double largest_m3 = rig.Cylinders.Max(c => c.Volume_m3);
        IReadOnlyList<StandardSize> sizes = SizesFor(rig);
        int smaller = sizes.Count(s => s.Volume_m3 <= largest_m3 * 1.001);
        if (portable && smaller < sizes.Count)
        {
            yield return new(RemedyKind.Size, smaller, sizes.Count, 1, (s, v) => Each(s, c => SizeSweep.Resized(c, Full(sizes[(int)Math.Round(v) - 1]))))
            {
                Name = v => sizes[(int)Math.Round(v) - 1].Name,
            };
        }

        if (portable && rig.Cylinders.Count == 1)
        {
            if (!rig.Gas.IsMixed)
                yield return new(RemedyKind.SecondOpen, 0, 1, 1, (s, _) => Twice(s, new OpenTogether()));
            yield return new(RemedyKind.SecondChangeover, 0, 1, 1, (s, _) => Twice(s, new AutomaticChangeover()));
        }

        if (rig.Thermostat is { NightSetPoint_K: > LowestSetPoint_K } thermostat && rig.Furnace is not null)
        {
            yield return new(RemedyKind.NightSetPoint, thermostat.NightSetPoint_K, LowestSetPoint_K, SetPointStep_K,
                (s, v) => s with { Rig = s.Rig with { Thermostat = s.Rig.Thermostat! with { NightSetPoint_K = v } } });
        }

        int other = Relaxation.LargestOther(rig);
        if (other >= 0)
        {
            yield return new(RemedyKind.ApplianceOff, 0, 1, 1, (s, _) => s with { Rig = s.Rig with { Appliances = [.. s.Rig.Appliances.Where((_, i) => i != other)] } })
            {
                Name = _ => rig.Appliances[other].Name,
            };
        }

        if (rig.Regulator.RatedFlow_W < LargestRegulator_W)
        {
            yield return new(RemedyKind.Regulator, rig.Regulator.RatedFlow_W, LargestRegulator_W, RegulatorStep_W,
                (s, v) => s with { Rig = s.Rig with { Regulator = s.Rig.Regulator with { RatedFlow_W = v } } });
        }
    }

    private static Scenario Each(Scenario scenario, Func<CylinderSpecification, CylinderSpecification> change)
        => scenario with { Rig = scenario.Rig with { Cylinders = [.. scenario.Rig.Cylinders.Select(change)] } };

    // A stated heat is the mixed gas's own and does not go over to propane.
    private static Scenario OfPropane(Scenario scenario)
    {
        Scenario filled = Each(scenario, c => c with { Contents_kg = Math.Min(c.Contents_kg, c.LegalFill_kg) });
        return filled with { Rig = filled.Rig with { Gas = new GasSpecification() } };
    }

    private static CylinderSpecification Under(CylinderSpecification cylinder, double power_W) => cylinder with
    {
        Blanket = cylinder.Blanket is { } worn
            ? worn with { Power_W = Math.Max(worn.Power_W, power_W) }
            : new BlanketSpecification { Power_W = power_W },
    };

    private static CylinderSpecification Full(StandardSize size) => new()
    {
        Name = size.Name,
        Orientation = size.Orientation,
        Volume_m3 = size.Volume_m3,
        OutsideDiameter_m = size.OutsideDiameter_m,
        WallThickness_m = size.WallThickness_m,
        MetalMass_kg = size.ShellMass_kg,
        Tare_kg = size.Tare_kg,
        LegalFill_kg = size.LegalFill_kg,
        Contents_kg = size.LegalFill_kg,
    };

    private static Scenario Twice(Scenario scenario, CylinderArrangement arrangement) => scenario with
    {
        Rig = scenario.Rig with { Cylinders = [scenario.Rig.Cylinders[0], scenario.Rig.Cylinders[0]], Arrangement = arrangement },
    };
}
