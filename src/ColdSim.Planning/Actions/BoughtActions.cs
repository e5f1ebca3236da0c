using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Gas;
using ColdSim.Physics.Units;
using ColdSim.Planning.Compare;

namespace ColdSim.Planning.Actions;

/// <summary>What must be bought or fetched for the gas.</summary>
/// <remarks>
/// Nothing is offered that is not sold and listed for the purpose, nor more than the legal filling, nor more than two cylinders to carry, each of
/// at most 105 lb of water.
/// </remarks>
internal static class BoughtActions
{
    // Ends of reach that are common practice, no source: blankets by size of cylinder, two-stage regulators for coaches.
    private const double SmallBlanket_W = 150, LargeBlanket_W = 400, BlanketStep_W = 5;
    private const double LargestRegulator_W = 400_000 * ConversionFactors.BtuPerHour_W, RegulatorStep_W = 20_000 * ConversionFactors.BtuPerHour_W;
    private const double SmallBlanketTo_m3 = 0.033;

    /// <summary>All that the rig has room for.</summary>
    public static IEnumerable<CandidateAction> Gas(Scenario scenario, AmountGrid grid)
    {
        Rig rig = scenario.Rig;
        double missing_kg = rig.Cylinders.Max(c => c.LegalFill_kg - c.Contents_kg);
        if (missing_kg > 0.1 * grid.Mass_kg)
        {
            yield return new(ActionKind.TopUp, AmountGrid.Upwards(0, missing_kg, grid.Mass_kg),
                (s, v) => Each(s, c => c with { Contents_kg = Math.Max(c.Contents_kg, Math.Min(c.LegalFill_kg, c.Contents_kg + v)) }));
        }

        double worn_W = rig.Cylinders.Min(c => c.Blanket?.Power_W ?? 0);
        double most_W = rig.Cylinders.Max(c => c.Volume_m3) <= SmallBlanketTo_m3 ? SmallBlanket_W : LargeBlanket_W;
        if (worn_W < most_W)
            yield return new(ActionKind.Blanket, AmountGrid.Upwards(worn_W, most_W, BlanketStep_W), (s, v) => Each(s, c => Under(c, v, s.Rig.Site.Hookup)));
        if (rig.Gas.IsMixed)
            yield return CandidateAction.Once(ActionKind.PurePropane, OfPropane);

        // Frame tanks are built in, and no size or second one takes their place.
        if (rig.Cylinders.All(c => c.Orientation == Orientation.Upright))
        {
            foreach (CandidateAction action in OfCylinders(rig)) yield return action;
        }

        if (rig.Regulator.RatedFlow_W < LargestRegulator_W)
        {
            yield return new(ActionKind.Regulator, AmountGrid.Upwards(rig.Regulator.RatedFlow_W, LargestRegulator_W, RegulatorStep_W),
                (s, v) => OnBoardActions.With(s, r => r with { Regulator = r.Regulator with { RatedFlow_W = v } }))
            {
                Now = rig.Regulator.RatedFlow_W,
            };
        }
    }

    private static IEnumerable<CandidateAction> OfCylinders(Rig rig)
    {
        bool carried = rig.Cylinders.All(c => !ComparedOption.IsTooLargeToCarry(c));
        if (rig.Cylinders.Count == 1 && carried)
        {
            yield return CandidateAction.Once(ActionKind.SecondChangeover, s => Twice(s, new AutomaticChangeover()));
            if (!rig.Gas.IsMixed)
                yield return CandidateAction.Once(ActionKind.SecondOpen, s => Twice(s, new OpenTogether()));
        }

        double largest_m3 = rig.Cylinders.Max(c => c.Volume_m3);
        bool metric = rig.Cylinders.All(c => c.Name.EndsWith(" kg", StringComparison.Ordinal));
        StandardSize[] larger = [.. StandardSize.Uprights(metric).Where(s => s.Volume_m3 > largest_m3 * 1.001).OrderBy(s => s.Volume_m3)];
        if (larger.Length > 0)
        {
            StandardSize Sized(double volume_m3) => larger.First(s => s.Volume_m3 == volume_m3);
            yield return new(ActionKind.Size, [.. larger.Select(s => s.Volume_m3)], (s, v) => Each(s, c => Resized(c, Sized(v)))) { Name = v => Sized(v).Name };
        }
    }

    private static Scenario Each(Scenario scenario, Func<CylinderSpecification, CylinderSpecification> change)
        => OnBoardActions.With(scenario, r => r with { Cylinders = [.. r.Cylinders.Select(change)] });

    private static CylinderSpecification Resized(CylinderSpecification cylinder, StandardSize size)
    {
        CylinderSpecification full = size.Full();
        return SizeSweep.Resized(cylinder, full) with { Contents_kg = full.LegalFill_kg, InitialTemperature_K = null };
    }

    // A stated heat is the mixed gas's own and does not go over to propane.
    private static Scenario OfPropane(Scenario scenario)
    {
        Scenario filled = Each(scenario, c => c with { Contents_kg = Math.Min(c.Contents_kg, c.LegalFill_kg) });
        return OnBoardActions.With(filled, r => r with { Gas = new GasSpecification() });
    }

    private static CylinderSpecification Under(CylinderSpecification cylinder, double power_W, bool hookup) => cylinder with
    {
        Blanket = cylinder.Blanket is { } worn
            ? worn with { Power_W = Math.Max(worn.Power_W, power_W) }
            : new BlanketSpecification { Power_W = power_W, Supply = hookup ? BlanketSupply.ShorePower : BlanketSupply.Battery },
    };

    private static Scenario Twice(Scenario scenario, CylinderArrangement arrangement) => OnBoardActions.With(scenario, r => r with
    {
        Cylinders = [r.Cylinders[0], r.Cylinders[0] with { Label = null, Contents_kg = r.Cylinders[0].LegalFill_kg, InitialTemperature_K = null }],
        Arrangement = arrangement,
    });
}
