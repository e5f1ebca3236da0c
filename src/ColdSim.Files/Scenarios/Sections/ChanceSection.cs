using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[chance]</c>: how far off things may be, and the chance that is wanted.</summary>
internal static class ChanceSection
{
    private const string FromFit = "the error of the scenario's [fit]";

    private static readonly ErrorSizes Usual = new();

    private static readonly QuantityKey Temperature = new(
        "temperature_error", Dimension.TemperatureDifference, "0 K", "10 K", KeyDefault.Of(Usual.Temperature.Value, "K"),
        "of the forecast temperature a day ahead");

    private static readonly QuantityKey TemperatureGrowth = new(
        "temperature_growth", Dimension.TemperatureDifference, "0 K", "3 K", KeyDefault.Of(Usual.TemperatureGrowth.Value, "K"),
        "how much that grows for every day further ahead, and shrinks for every day nearer");

    private static readonly QuantityKey CorrelationTime = new(
        "correlation_time", Dimension.Duration, "1 h", "10 d", KeyDefault.Of(Usual.CorrelationTime.Value, "h"),
        "time over which an error of the forecast is forgotten to 1/e; the wind's too");

    private static readonly NumberKey Tail = new(
        "tail", 2.5, 1000, KeyDefault.Of(Usual.Tail.Value), "degrees of freedom of Student's t: the fewer, the more often it is far off");

    private static readonly QuantityKey Wind = new(
        "wind_error", Dimension.Ratio, "0", "1.5", KeyDefault.Of(Usual.Wind.Value, ""), "of the wind's logarithm");

    private static readonly QuantityKey HeatLoss = new(
        "heat_loss_error", Dimension.Ratio, "0", "1", FitsElse(Usual.HeatLoss), "of the logarithm of the coach's heat loss");

    private static readonly QuantityKey Infiltration = new(
        "infiltration_error", Dimension.Ratio, "0", "1.5", FitsElse(Usual.Infiltration), "of the logarithm of `leakage_area`");

    private static readonly QuantityKey Reading = new(
        "reading_error", Dimension.Mass, "0 kg", "50 kg", KeyDefault.Of(Usual.Reading.Value, "lb"),
        "of what is in each cylinder; the latest reading's own where the run starts from a log");

    private static readonly QuantityKey SetPoint = new(
        "set_point_error", Dimension.TemperatureDifference, "0 K", "5 K", KeyDefault.Of(Usual.SetPoint.Value, "K"), "of both set points");

    private static readonly NumberKey DoorOpenings = new(
        "door_openings", 0, 500, KeyDefault.Of(Usual.DoorOpenings.Value),
        "most openings a day beyond those in the heat loss; a member has any number up to it");

    private static readonly QuantityKey Wanted = new(
        "wanted", Dimension.Ratio, "0.01", "0.999", KeyDefault.Of(0.9, ""), "the chance of holding all nights that is wanted");

    public static readonly ScenarioSection Declared = new(
        "chance", TableForm.One, "how far off things may be, and the chance that is wanted",
        [Temperature, TemperatureGrowth, CorrelationTime, Tail, Wind, HeatLoss, Infiltration, Reading, SetPoint, DoorOpenings, Wanted]);

    /// <summary>Reads the table.</summary>
    /// <param name="section">The table.</param>
    /// <param name="fit">What a fit found, whose errors are used where the table has none; or null.</param>
    public static (ErrorSizes Errors, double Wanted_frac) Read(SectionReader section, FittedFactors? fit)
    {
        ErrorSizes errors = new()
        {
            Temperature = Or(section.Get(Temperature), Usual.Temperature),
            TemperatureGrowth = Or(section.Get(TemperatureGrowth), Usual.TemperatureGrowth),
            CorrelationTime = Or(section.Get(CorrelationTime), Usual.CorrelationTime),
            Tail = Or(section.Get(Tail), Usual.Tail),
            Wind = Or(section.Get(Wind), Usual.Wind),
            HeatLoss = Or(section.Get(HeatLoss), Fitted(fit, FitKind.HeatLoss) ?? Usual.HeatLoss),
            Infiltration = Or(section.Get(Infiltration), Fitted(fit, FitKind.Infiltration) ?? Usual.Infiltration),
            Reading = Or(section.Get(Reading), Usual.Reading),
            SetPoint = Or(section.Get(SetPoint), Usual.SetPoint),
            DoorOpenings = Or(section.Get(DoorOpenings), Usual.DoorOpenings),
        };
        double wanted_frac = section.GetOrDefault(Wanted);
        section.Finish();
        return (errors, wanted_frac);
    }

    private static KeyDefault FitsElse(ErrorSize usual) => KeyDefault.Of($"`[fit]`'s, else {NumberShown.Of(usual.Value)}");

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
