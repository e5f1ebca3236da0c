using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;

namespace ColdSim.Planning;

/// <summary>Something done to the cylinders between two legs of a run, such as a filling.</summary>
public interface ILegTransition
{
    /// <summary>State of rig and coach afterwards.</summary>
    /// <param name="before">The state before.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="air_K">Outside air. [K]</param>
    RigState After(RigState before, Rig rig, double air_K);

    /// <summary>Places of the cylinders that it changes.</summary>
    IReadOnlyList<int> Cylinders { get; }

    /// <summary>Whether another does the same to the same state.</summary>
    /// <param name="other">The other.</param>
    bool ActsLike(ILegTransition other);
}

/// <summary>A part of a run in one place, on one weather, without anybody touching the cylinders in between.</summary>
public sealed record Leg
{
    /// <summary>Its first instant: the end of the leg before.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>Its last instant.</summary>
    public required DateTimeOffset To { get; init; }

    /// <summary>The place; on the road that of the next stop.</summary>
    public required SiteSpecification Site { get; init; }

    /// <summary>The weather there.</summary>
    public required WeatherSeries Weather { get; init; }

    /// <summary>Whether the coach is on the road: valves shut, nothing burns.</summary>
    public bool OnTheRoad { get; init; }

    /// <summary>Whether the furnace is out and stays so.</summary>
    public bool FurnaceOut { get; init; }

    /// <summary>What is done before it begins, in order.</summary>
    public IReadOnlyList<ILegTransition> Before { get; init; } = [];

    /// <summary>The same legs with the furnace out from an instant on: the one in which it lies is cut in two.</summary>
    /// <param name="legs">The legs.</param>
    /// <param name="from">When it stops.</param>
    public static IReadOnlyList<Leg> WithFurnaceOut(IReadOnlyList<Leg> legs, DateTimeOffset from)
    {
        ArgumentNullException.ThrowIfNull(legs);
        List<Leg> cut = [];
        foreach (Leg leg in legs)
        {
            if (from <= leg.From) cut.Add(leg with { FurnaceOut = true });
            else if (from >= leg.To) cut.Add(leg);
            else cut.AddRange([leg with { To = from }, leg with { From = from, FurnaceOut = true, Before = [] }]);
        }

        return cut;
    }

    /// <summary>Whether another leg of the same rig on the same weather runs as this one does from the same state.</summary>
    /// <param name="other">The other.</param>
    public bool RunsLike(Leg other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return From == other.From && To == other.To && Site == other.Site && OnTheRoad == other.OnTheRoad && FurnaceOut == other.FurnaceOut
            && Before.Count == other.Before.Count && Before.Zip(other.Before).All(t => t.First.ActsLike(t.Second));
    }

    /// <summary>The rig as it is used in this leg.</summary>
    public Rig Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return OnTheRoad
            ? rig with { Site = Site, Furnace = null, Appliances = [.. rig.Appliances.Select(a => a.Shut())], Heaters = [] }
            : rig with { Site = Site, Furnace = FurnaceOut ? null : rig.Furnace };
    }
}
