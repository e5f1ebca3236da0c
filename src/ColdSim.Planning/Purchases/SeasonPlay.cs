namespace ColdSim.Planning.Purchases;

/// <summary>A set-up through the record: filled up whenever it would not last the coming night. SI units.</summary>
/// <param name="ShortNights">Nights for which not even full cylinders were enough.</param>
/// <param name="Refills">Ways to the filler, each time for all cylinders that were begun.</param>
/// <param name="Fillings">Cylinders filled.</param>
/// <param name="Changes">Changes from an empty cylinder to the next one.</param>
/// <param name="Used_kg">Gas burned. [kg]</param>
/// <param name="Money">What the gas cost; null without a price.</param>
public sealed record SeasonPlay(int ShortNights, int Refills, int Fillings, int Changes, double Used_kg, double? Money)
{
    /// <summary>Plays it.</summary>
    /// <param name="season">The nights.</param>
    /// <param name="setUp">The set-up.</param>
    /// <param name="limits">Its limits.</param>
    /// <param name="price">What gas costs; null where it is not known.</param>
    public static SeasonPlay Of(SeasonUse season, SetUp setUp, ColdLimits limits, Price? price)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(setUp);
        ArgumentNullException.ThrowIfNull(limits);
        double full_kg = setUp.LegalFill_kg, reserve_kg = ColdLimits.Reserve_frac * full_kg, one_kg = setUp.Size.LegalFill_kg;
        double left_kg = full_kg, used_kg = 0;
        int shortNights = 0, refills = 0, fillings = 0, changes = 0;
        foreach (SeasonNight night in season.Nights)
        {
            double needed_kg = Math.Max(limits.NeededFill_frac(night.Low_K) * full_kg, night.Used_kg + reserve_kg);
            if (left_kg < needed_kg && left_kg < full_kg)
            {
                refills++;
                fillings += Begun(full_kg - left_kg);
                left_kg = full_kg;
            }

            if (left_kg < needed_kg) shortNights++;
            int before = Emptied(left_kg);
            double burned_kg = Math.Min(night.Used_kg, left_kg);
            left_kg -= burned_kg;
            used_kg += burned_kg;
            changes += Math.Min(Emptied(left_kg), setUp.Count - 1) - Math.Min(before, setUp.Count - 1);
        }

        fillings += Begun(full_kg - left_kg);
        double? money = price is { } p ? p.Each ? p.Amount * fillings : p.Of(used_kg) : null;
        return new SeasonPlay(shortNights, refills, fillings, changes, used_kg, money);

        int Begun(double gone_kg) => (int)Math.Ceiling(gone_kg / one_kg - 1e-9);

        int Emptied(double kg) => (int)Math.Floor((full_kg - kg) / (one_kg * (1 - ColdLimits.Reserve_frac)) + 1e-9);
    }
}
