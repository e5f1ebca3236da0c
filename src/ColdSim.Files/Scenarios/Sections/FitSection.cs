using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[fit]</c>: what <c>coldsim fit</c> found, applied on top of the rest.</summary>
internal static class FitSection
{
    private static readonly QuantityKey HeatLoss = new(
        "heat_loss_factor", Dimension.Ratio, "0.1", "10", KeyDefault.Of(1, ""), "times every conductance of the coach's envelope and to the ground");

    private static readonly QuantityKey HeatLossError = Error("heat_loss_error", Dimension.Ratio, "0", "2");

    private static readonly QuantityKey Infiltration = new(
        "infiltration_factor", Dimension.Ratio, "0.05", "20", KeyDefault.Of(1, ""), "times `leakage_area`, doors that open included");

    private static readonly QuantityKey InfiltrationError = Error("infiltration_error", Dimension.Ratio, "0", "2");

    private static readonly QuantityKey BaseUse = new(
        "base_use", Dimension.Power, "-2 kW", "5 kW", KeyDefault.Of(0, "W"),
        "gas that other appliances take all the time; below zero where the draws are too high, and then left out of a run");

    private static readonly QuantityKey BaseUseError = Error("base_use_error", Dimension.Power, "0 W", "2 kW");

    private static readonly QuantityKey WindExposure = new(
        "wind_exposure", Dimension.Ratio, "0", "1", KeyDefault.Of("`[cylinder.surroundings]`"), "in place of the cylinder's `wind_exposure`")
    {
        OldName = "wind_shelter",
    };

    private static readonly QuantityKey WindExposureError = new("wind_exposure_error", Dimension.Ratio, "0", "1", KeyDefault.None, "of it")
    {
        GoesWith = [WindExposure.Name],
        OldName = "wind_shelter_error",
    };

    private static readonly ItemsKey CorrelationsKey = new(
        "correlations", ItemForms.Number, KeyDefault.Of("0"),
        "of the errors that are given, in this order: the first with the second, with the third, and so on, then the second with the third")
    {
        IsList = true,
        Form = "list of numbers",
        Accepts = "-1 to 1",
        Such = "[0.2, -0.5, 0]",
    };

    public static readonly ScenarioSection Declared = new(
        "fit", TableForm.One, "what coldsim fit found, laid over the rest",
        [HeatLoss, HeatLossError, Infiltration, InfiltrationError, BaseUse, BaseUseError, WindExposure, WindExposureError, CorrelationsKey]);

    /// <summary>The factors, or null where there is no such table.</summary>
    public static FittedFactors? Read(SectionReader section)
    {
        double? shelter = section.Get(WindExposure);
        FittedFactors factors = new()
        {
            HeatLoss = section.GetOrDefault(HeatLoss),
            Infiltration = section.GetOrDefault(Infiltration),
            BaseUse_W = section.GetOrDefault(BaseUse),
            WindExposure_frac = shelter,
        };
        (FitKind Kind, double? Error)[] errors =
        [
            (FitKind.HeatLoss, section.Get(HeatLossError)), (FitKind.Infiltration, section.Get(InfiltrationError)),
            (FitKind.BaseUse, section.Get(BaseUseError)), (FitKind.WindExposure, section.Get(WindExposureError)),
        ];
        if (errors[^1].Error is not null && shelter is null)
            section.Report(WindExposureError, "'wind_exposure_error' without wind_exposure");
        List<FitKind> kinds = [];
        List<double> known = [];
        foreach ((FitKind kind, double? error) in errors)
        {
            if (error is not double value)
                continue;
            kinds.Add(kind);
            known.Add(value);
        }

        double[] correlations = Correlations(section, known.Count * (known.Count - 1) / 2);
        section.Finish();
        if (!section.Present)
            return null;
        section.Reading.Assume($"coach: heat loss, infiltration and base use as [fit] has them: times {factors.HeatLoss:0.##}, times {factors.Infiltration:0.##}, {factors.BaseUse_W:0} W");
        return factors with { Estimated = [.. kinds], Covariance = Covariance([.. known], correlations) };
    }

    private static QuantityKey Error(string name, Dimension dimension, string low, string high, params IReadOnlyList<string> with)
        => new(name, dimension, low, high, KeyDefault.None, "of it") { GoesWith = with };

    // Pair by pair, in the order of the keys: first with second, first with third, ..., second with third, ...
    private static double[] Correlations(SectionReader section, int pairs)
    {
        if (section.Value(CorrelationsKey) is not { } value)
            return new double[pairs];
        string accepted = FormattableString.Invariant($"accepted: a list of {pairs} numbers from -1 to 1, one for each pair of errors given");
        if (value is TomlList list && list.Items.Count == pairs && list.Items.All(i => i is TomlNumber { Value: >= -1 and <= 1 }))
            return [.. list.Items.Select(i => ((TomlNumber)i).Value)];
        section.Reading.Report(value.Place, "'correlations' does not go with the errors given", accepted);
        return new double[pairs];
    }

    private static double[] Covariance(double[] errors, double[] correlations)
    {
        int n = errors.Length, pair = 0;
        double[] c = new double[n * n];
        for (int i = 0; i < n; i++)
        {
            c[i * n + i] = errors[i] * errors[i];
            for (int j = i + 1; j < n; j++)
                c[i * n + j] = c[j * n + i] = correlations[pair++] * errors[i] * errors[j];
        }

        return c;
    }
}
