using ColdSim.Model.Engine;

namespace ColdSim.Planning.Harms;

/// <summary>How far inside has fallen because of a gas shortage, and for no other reason.</summary>
/// <remarks>
/// Counted from the set point, or from the inside temperature at the start of the shortage if that was lower, so that a furnace that is too
/// small and a set point just raised are not attributed to the gas. The reference is kept until inside is back at it, or until something
/// else stops the heat.
/// </remarks>
internal sealed class SetPointShortfall
{
    private double _reference_K = double.NaN;

    /// <summary>Adds a step.</summary>
    /// <param name="record">The step.</param>
    /// <param name="lacksOther">Whether something else than gas stops the heat.</param>
    /// <returns>How far inside is below the reference; 0 while nothing was short, and where there is no set point. [K]</returns>
    public double Below_K(StepRecord record, bool lacksOther = false)
    {
        if (double.IsNaN(record.To.SetPoint_K)) return 0;
        if (record.Undersupplied && double.IsNaN(_reference_K)) _reference_K = record.From.Inside_K;
        if (lacksOther && !record.Undersupplied) _reference_K = double.NaN;
        if (double.IsNaN(_reference_K)) return 0;
        _reference_K = Math.Min(_reference_K, record.To.SetPoint_K);
        double below_K = _reference_K - record.To.Inside_K;
        if (!record.Undersupplied && below_K <= 0) _reference_K = double.NaN;
        return Math.Max(0, below_K);
    }
}
