using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Appliances;
using ColdSim.Model.Furnace;
using ColdSim.Model.Nodes;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[furnace]</c>: a forced-air furnace by its plate and its ignition board.</summary>
internal static class FurnaceSection
{
    private const string Outside = "outside";

    private static readonly FurnaceSpecification Usual = new() { Input_W = 0 };

    private static readonly QuantityKey Input = new(
        "input", Dimension.Power, "300 W", "60 kW", KeyDefault.Needed, "gross input at sea level, from the plate")
    { Comment = "from the plate" };

    private static readonly QuantityKey Efficiency = new(
        "efficiency", Dimension.Ratio, "0.3", "1", KeyDefault.Of(Usual.Efficiency_frac, ""), "heat to the coach per gross heat of gas")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly ChoiceKey<AltitudeRule> Altitude = new(
        "altitude", Usual.Altitude, "how altitude lowers the input",
        ("fixed orifice", AltitudeRule.FixedOrifice), ("code percentage", AltitudeRule.CodePercentage))
    { Comment = "or \"code percentage\"" };

    private static readonly QuantityKey FanCurrent = new(
        "fan_current", Dimension.Current, "0 A", "60 A", KeyDefault.Of("usual for its input"),
        "what the fan draws at 12 V while it purges and burns; it warms the coach, and a `[battery]` gives it where there is one")
    {
        Assumed = "{who}: fan current not given; assumed {value}, usual for its input",
    };

    private static readonly QuantityKey DuctLoss = new(
        "duct_loss", Dimension.Ratio, "0", "0.6", KeyDefault.Of(Usual.DuctLoss_frac, ""),
        "part of its heat that ducts under the floor lose; eight [mobile homes](sources.md#osti-20006305) lost about a sixth before their ducts were sealed")
    {
        Assumed = ScenarioKey.NotGiven + ", ducts that lose nothing outside the coach",
    };

    private static readonly TextKey DuctLossTo = new("duct_loss_to", KeyDefault.Of($"\"{Outside}\""), "where that heat goes")
    {
        Form = $"`\"{Outside}\"`, or the name of a `[[wet_bay]]`, which it warms",
        Such = Outside,
        GoesWith = [DuctLoss.Name],
    };

    private static readonly QuantityKey FullPressure = new(
        "full_pressure", Dimension.Pressure, "500 Pa", "10 kPa", KeyDefault.Of(Usual.FullPressure_Pa, "inH2O"),
        "delivery pressure from which the input is full");

    private static readonly QuantityKey IgnitionPressure = new(
        "ignition_pressure", Dimension.Pressure, "100 Pa", "10 kPa", KeyDefault.Of(Usual.IgnitionPressure_Pa, "inH2O"), "below it, it does not light");

    private static readonly QuantityKey DropOutPressure = new(
        "drop_out_pressure", Dimension.Pressure, "50 Pa", "10 kPa", KeyDefault.Of(Usual.DropOutPressure_Pa, "inH2O"), "below it, the flame is lost");

    private static readonly QuantityKey PrePurge = new(
        "pre_purge", Dimension.Duration, "0 s", "5 min", KeyDefault.Of(Usual.PrePurge_s, "s"), "fan before the first spark");

    private static readonly QuantityKey Trial = new(
        "trial", Dimension.Duration, "1 s", "60 s", KeyDefault.Of(Usual.TrialForIgnition_s, "s"), "open valve without a flame");

    private static readonly QuantityKey RetryPurge = new(
        "retry_purge", Dimension.Duration, "0 s", "10 min", KeyDefault.Of(Usual.RetryPurge_s, "s"), "fan between tries");

    private static readonly WholeKey Tries = new("tries", 1, 10, KeyDefault.Of(Usual.Tries), "tries before lockout");

    private static readonly QuantityKey Lockout = new(
        "lockout", Dimension.Duration, "1 min", "7 d", KeyDefault.Of(Usual.Lockout_s, "h"), "until the board tries again by itself");

    private static readonly QuantityKey PostPurge = new(
        "post_purge", Dimension.Duration, "0 s", "10 min", KeyDefault.Of(Usual.PostPurge_s, "s"), "fan after the flame");

    private static readonly DateTimeKey StopsAt = new(
        "stops_at", DateTimeForm.DateAndTime, KeyDefault.Of("never"),
        "from then on the furnace is out and stays out, as after a lockout that nobody resets: the run then says how soon what freezes")
    {
        Within = "within the run",
    };

    public static readonly ScenarioSection Declared = new(
        "furnace", TableForm.One, "a forced-air furnace by its plate and its ignition board",
        [
            Input, Efficiency, Altitude, FanCurrent, DuctLoss, DuctLossTo, FullPressure, IgnitionPressure, DropOutPressure, PrePurge, Trial, RetryPurge, Tries, Lockout, PostPurge,
            StopsAt,
        ]);

    public static (FurnaceSpecification? Furnace, DateTimeOffset? Stops, string? DuctLossTo) Read(SectionReader section, TimeSpan offset)
    {
        FurnaceSpecification furnace = new()
        {
            Input_W = section.Present ? section.Require(Input) : section.Get(Input, double.NaN),
            Efficiency_frac = section.GetOrDefault(Efficiency),
            Altitude = section.GetOrDefault(Altitude),
            FanCurrent_A = section.Get(FanCurrent),
            DuctLoss_frac = section.GetOrDefault(DuctLoss),
            FullPressure_Pa = section.GetOrDefault(FullPressure),
            IgnitionPressure_Pa = section.GetOrDefault(IgnitionPressure),
            DropOutPressure_Pa = section.GetOrDefault(DropOutPressure),
            PrePurge_s = section.GetOrDefault(PrePurge),
            TrialForIgnition_s = section.GetOrDefault(Trial),
            RetryPurge_s = section.GetOrDefault(RetryPurge),
            Tries = section.GetOrDefault(Tries),
            Lockout_s = section.GetOrDefault(Lockout),
            PostPurge_s = section.GetOrDefault(PostPurge),
        };
        DateTimeOffset? stops = section.Get(StopsAt, offset);
        string? lossTo = section.Get(DuctLossTo);
        section.Finish();
        if (!section.Present)
            return (null, null, null);
        if (section.Has(DuctLossTo) && !section.Has(DuctLoss))
            section.Report(DuctLossTo, $"'{DuctLossTo.Name}' has no effect without '{DuctLoss.Name}'");
        section.Assume(Efficiency, "furnace");
        section.Assume(DuctLoss, "furnace");
        if (furnace.FanCurrent_A is null)
            section.Assume(FanCurrent, "furnace", $"{FurnaceSpecification.UsualFanCurrent_A(furnace.Input_W):0.0} A");
        if (furnace.IgnitionPressure_Pa > furnace.FullPressure_Pa)
            section.Report(IgnitionPressure, "the ignition pressure is above the full pressure");
        if (furnace.DropOutPressure_Pa > furnace.IgnitionPressure_Pa)
            section.Report(DropOutPressure, "the drop-out pressure is above the ignition pressure");
        return (furnace, stops, lossTo);
    }

    /// <summary>Where the ducts' loss goes: the bay it names, or outside. The heat that a bay gets is no loss of the furnace's.</summary>
    /// <param name="section">The furnace's table.</param>
    /// <param name="furnace">The furnace, as it was read.</param>
    /// <param name="lossTo">What the table says.</param>
    /// <param name="bays">The wet bays.</param>
    /// <returns>The furnace, and the place of the bay that gets the heat; -1 for outside.</returns>
    public static (FurnaceSpecification? Furnace, int Bay) DuctsLoseTo(
        SectionReader section, FurnaceSpecification? furnace, string? lossTo, IReadOnlyList<ThermalNode> bays)
    {
        if (lossTo?.Trim() is not { } where || furnace is null)
            return (furnace, -1);
        string[] words = [Outside, .. bays.Select(b => b.Name)];
        int place = Array.FindIndex(words, w => where.Equals(w, StringComparison.OrdinalIgnoreCase));
        if (place < 0)
        {
            string accepted = "accepted: " + string.Join(", ", words.Select(w => $"\"{Quote.Of(w)}\""));
            section.Reading.Report(section.ValuePlace(DuctLossTo), $"'{DuctLossTo.Name}' is \"{Quote.Of(where)}\"", accepted, NearestName.Of(where, words));
        }

        return place <= 0 ? (furnace, -1) : (furnace with { DuctLoss_frac = 0 }, place - 1);
    }

    /// <summary>Checks when it stops against the run.</summary>
    public static void CheckStop(SectionReader section, Scenario scenario)
    {
        if (scenario.HeatStops is not { } stops)
            return;
        if (stops < scenario.Start || stops >= scenario.End)
        {
            section.Report(StopsAt, FormattableString.Invariant($"the furnace stops at {stops:yyyy-MM-dd'T'HH:mm:sszzz}, outside the run"),
                FormattableString.Invariant($"accepted: from {scenario.Start:yyyy-MM-dd'T'HH:mm:sszzz} to before {scenario.End:yyyy-MM-dd'T'HH:mm:sszzz}"));
            return;
        }

        section.Reading.Assume($"furnace: out from stops_at on; a night that has its gas and its voltage counts as holding, however cold it is inside");
    }
}
