using ColdSim.Model;
using ColdSim.Model.Cylinder;

namespace ColdSim.Planning.Explain.Relaxations;

/// <summary>One limit eased by a part of itself: a what-if for finding out which limit binds, never a piece of advice.</summary>
public abstract class Relaxation
{
    /// <summary>All of them, in the order that settles what nothing else does.</summary>
    public static IReadOnlyList<Relaxation> All { get; } =
        [new MoreHeat(), new MoreWettedWall(), new LargerRegulator(), new SmallerAppliance(), new OtherAirPressure(), new MorePropane()];

    /// <summary>The limit that it eases.</summary>
    public abstract Limit Limit { get; }

    /// <summary>The scenario with the limit eased; two where it is not known beforehand which way eases it; none where it has no such limit.</summary>
    /// <param name="scenario">As it is.</param>
    /// <param name="part_frac">By which part.</param>
    public abstract IReadOnlyList<Scenario> Eased(Scenario scenario, double part_frac);

    /// <summary>A scenario with another rig.</summary>
    protected static Scenario With(Scenario scenario, Func<Rig, Rig> change)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(change);
        return scenario with { Rig = change(scenario.Rig) };
    }

    /// <summary>A scenario with every cylinder changed.</summary>
    protected static Scenario WithEach(Scenario scenario, Func<CylinderSpecification, CylinderSpecification> change)
        => With(scenario, rig => rig with { Cylinders = [.. rig.Cylinders.Select(change)] });
}
