using System.Text.Json;
using ColdSim.Files.Scenarios;
using ColdSim.Planning.Fits;
using static ColdSim.Files.Results.JsonValues;

namespace ColdSim.Files.Results;

/// <summary>A fit as JSON, for programs; docs/json.md describes every key.</summary>
public static class FitJson
{
    /// <summary>Writes the fit.</summary>
    /// <param name="fit">What it says.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(FitReport fit, Stream output)
    {
        ArgumentNullException.ThrowIfNull(fit);
        ArgumentNullException.ThrowIfNull(output);
        using (Utf8JsonWriter json = Document(output))
        {
            json.WriteStartObject();
            Time(json, "from", fit.From);
            Time(json, "to", fit.To);
            json.WriteStartArray("parameters");
            for (int i = 0; i < fit.Estimates.Count; i++)
                Estimate(json, fit, i);
            json.WriteEndArray();
            Texts(json, "silent", [.. fit.Silent.Select(FitText.Key)]);
            Texts(json, "confused", [.. fit.Confused.Select(g => string.Join(' ', g.Select(FitText.Key)))]);
            Numbers(json, "eigenvalues", fit.Eigenvalues);
            Number(json, "reduced_chi_square", fit.ReducedChiSquare);
            json.WriteNumber("degrees_of_freedom", fit.Freedom);
            Number(json, "burner_cycle_kg", fit.Cycle.Kilograms);
            json.WriteStartArray("readings");
            foreach (FitResidual r in fit.Residuals)
            {
                json.WriteStartObject();
                json.WriteNumber("line", r.Row.Reading.Line);
                Time(json, "time", r.Row.Reading.Time);
                Number(json, "mass_kg", r.Row.Contents.Mass.Kilograms);
                Number(json, "fitted_kg", r.Predicted.Kilograms);
                Number(json, "off_in_uncertainties", r.Times);
                json.WriteBoolean("grossly_off", r.Gross);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }

    private static void Estimate(Utf8JsonWriter json, FitReport fit, int i)
    {
        FitEstimate e = fit.Estimates[i];
        int n = fit.Estimates.Count;
        json.WriteStartObject();
        json.WriteString("key", FitText.Key(e.Kind));
        Number(json, "value", e.Value);
        Number(json, "low", e.Low);
        Number(json, "high", e.High);
        Number(json, "standard_uncertainty", Math.Sqrt(fit.Factors.Covariance[i * (n + 1)]));
        Number(json, "learned", e.Learned_frac);
        json.WriteBoolean("identified", e.IsIdentified);
        Numbers(json, "correlations", [.. Enumerable.Range(0, n).Select(j => fit.Correlations[i * n + j])]);
        json.WriteEndObject();
    }

    private static void Numbers(Utf8JsonWriter json, string key, IReadOnlyList<double> values)
    {
        json.WriteStartArray(key);
        foreach (double value in values)
            json.WriteNumberValue(Math.Round(value, 6));
        json.WriteEndArray();
    }
}
