using ColdSim.Files.Quantities;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Fits;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[chance]</c>: how far off things may be, and the chance that is wanted.</summary>
internal static class ChanceSection
{
    private const string FromFit = "the error of the scenario's [fit]";

    private static readonly QuantityKey Temperature = new("temperature_error", Dimension.TemperatureDifference, "0 K", "10 K");
    private static readonly QuantityKey TemperatureGrowth = new("temperature_growth", Dimension.TemperatureDifference, "0 K", "3 K");
    private static readonly QuantityKey CorrelationTime = new("correlation_time", Dimension.Duration, "1 h", "10 d");
    private static readonly QuantityKey Wind = new("wind_error", Dimension.Ratio, "0", "1.5");
    private static readonly QuantityKey HeatLoss = new("heat_loss_error", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey Infiltration = new("infiltration_error", Dimension.Ratio, "0", "1.5");
    private static readonly QuantityKey Reading = new("reading_error", Dimension.Mass, "0 kg", "50 kg");
    private static readonly QuantityKey SetPoint = new("set_point_error", Dimension.TemperatureDifference, "0 K", "5 K");
    private static readonly QuantityKey Wanted = new("wanted", Dimension.Ratio, "0.01", "0.999");

    /// <summary>Reads it.</summary>
    /// <param name="section">The table.</param>
    /// <param name="fit">What a fit found, whose errors stand in where the table says none; or null.</param>
    public static (ErrorSizes Errors, double Wanted_frac) Read(SectionReader section, FittedFactors? fit)
    {
        ErrorSizes usual = new();
        ErrorSizes errors = new()
        {
            Temperature = Or(section.Get(Temperature), usual.Temperature),
            TemperatureGrowth = Or(section.Get(TemperatureGrowth), usual.TemperatureGrowth),
            CorrelationTime = Or(section.Get(CorrelationTime), usual.CorrelationTime),
            Tail = Or(section.Number("tail", 2.5, 1000), usual.Tail),
            Wind = Or(section.Get(Wind), usual.Wind),
            HeatLoss = Or(section.Get(HeatLoss), Fitted(fit, FitKind.HeatLoss) ?? usual.HeatLoss),
            Infiltration = Or(section.Get(Infiltration), Fitted(fit, FitKind.Infiltration) ?? usual.Infiltration),
            Reading = Or(section.Get(Reading), usual.Reading),
            SetPoint = Or(section.Get(SetPoint), usual.SetPoint),
            DoorOpenings = Or(section.Number("door_openings", 0, 500), usual.DoorOpenings),
        };
        double wanted_frac = section.Get(Wanted, 0.9);
        section.Finish();
        return (errors, wanted_frac);
    }

    private static ErrorSize Or(double? stated, ErrorSize usual) => stated is { } value ? new ErrorSize(value, ErrorSize.FromScenario) : usual;

    private static ErrorSize? Fitted(FittedFactors? fit, FitKind kind)
    {
        for (int i = 0; i < fit?.Estimated.Count; i++)
        {
            if (fit.Estimated[i] == kind) return new ErrorSize(Math.Sqrt(fit.Covariance[i * fit.Estimated.Count + i]), FromFit);
        }

        return null;
    }
}
