using ColdSim.Model;

namespace ColdSim.Planning.Explain.Relaxations;

/// <summary>The largest other appliance takes less: beside the furnace, or beside the largest where there is no furnace.</summary>
public sealed class SmallerAppliance : Relaxation
{
    /// <inheritdoc/>
    public override Limit Limit => Limit.Appliances;

    /// <summary>The place among the draws of the largest other appliance; -1 where there is none.</summary>
    public static int LargestOther(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        int[] bySize = [.. Enumerable.Range(0, rig.Appliances.Count).OrderByDescending(i => rig.Appliances[i].Input_W)];
        return bySize.ElementAtOrDefault(rig.Furnace is null ? 1 : 0, -1);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Scenario> Eased(Scenario scenario, double part_frac)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        int other = LargestOther(scenario.Rig);
        return other < 0 ? [] :
        [
            With(scenario, rig => rig with
            {
                Appliances = [.. rig.Appliances.Select((d, i) => i == other ? d with { Input_W = d.Input_W * (1 - part_frac) } : d)],
            }),
        ];
    }
}

/// <summary>What LINQ leaves out.</summary>
internal static class Places
{
    /// <summary>The element at a place, or another.</summary>
    public static int ElementAtOrDefault(this int[] values, int place, int otherwise) => place < values.Length ? values[place] : otherwise;
}
