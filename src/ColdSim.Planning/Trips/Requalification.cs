using ColdSim.Model.Cylinder;

namespace ColdSim.Planning.Trips;

/// <summary>Whether a station may fill a cylinder by the date stamped on it.</summary>
internal static class Requalification
{
    /// <summary>Years from manufacture or from a volumetric test until the next is due, after 49 CFR 180.209.</summary>
    public const int Usual_years = 12;

    /// <summary>The last day on which a cylinder may be filled.</summary>
    /// <param name="stamped">Day of manufacture or of the last requalification.</param>
    /// <param name="years">For how long that holds.</param>
    public static DateOnly LastDay(DateOnly stamped, int years) => stamped.AddYears(years);

    /// <summary>Which refills are refused, in the order of the refills.</summary>
    /// <param name="refills">In order of time.</param>
    /// <param name="cylinders">The rig's cylinders.</param>
    /// <remarks>An exchange takes a cylinder past its date; the one that comes in its place is assumed to be in date.</remarks>
    public static IReadOnlyList<bool> Refused(IReadOnlyList<Refill> refills, IReadOnlyList<CylinderSpecification> cylinders)
    {
        ArgumentNullException.ThrowIfNull(refills);
        ArgumentNullException.ThrowIfNull(cylinders);
        HashSet<int> exchanged = [];
        List<bool> refused = [];
        foreach (Refill refill in refills)
        {
            bool old = !exchanged.Contains(refill.Cylinder) && cylinders[refill.Cylinder].RequalifyBy is { } last && refill.Day > last;
            refused.Add(refill.Kind == RefillKind.Fill && old);
            if (refill.Kind == RefillKind.Exchange) exchanged.Add(refill.Cylinder);
        }

        return refused;
    }
}
