using System.Text.Json;
using ColdSim.Files.Signs;
using ColdSim.Planning.Diagnosis;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Planning.Diagnosis;

/// <summary>An invented case: what somebody reports, and the cause that its author had in mind.</summary>
internal sealed record DiagnosisCase(Cause Cause, string Story, string Misleading, IReadOnlyDictionary<string, string> Signs)
{
    // What says how cold and how high it is and which rig it is, which is not seen or heard.
    private static readonly string[] Setting = ["cylinder", "use"];

    public static IReadOnlyList<DiagnosisCase> All { get; } = Read();

    /// <summary>Every kind of evidence that some case has.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. All.SelectMany(c => c.Signs.Keys).Distinct().Except(Setting)];

    /// <summary>Place of the true cause in the ranking, from 1; 0 where nothing is left to go by.</summary>
    public int Place(string? without = null)
    {
        SignReader input = new(Signs.Where(s => s.Key != without).ToDictionary(), null);
        DiagnosisQuestion question = input.Question();
        Assert.Empty(input.Faults);
        if (!question.HasEvidence)
            return 0;
        double[] p = Posterior.Of(question, new CylinderLikelihood(question.Rig));
        return 1 + p.Count(x => x > p[(int)Cause]);
    }

    private static DiagnosisCase[] Read()
    {
        string path = Path.Combine(DocPage.Source, "..", "tests", "ColdSim.Tests", "Planning", "Diagnosis", "cases.json");
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(path));
        return
        [
            .. document.RootElement.EnumerateArray().Select(c => new DiagnosisCase(
                Enum.GetValues<Cause>().Single(cause => DiagnosisFigures.Causes[cause].Key == c.GetProperty("cause").GetString()),
                c.GetProperty("story").GetString()!,
                c.GetProperty("misleading").GetString()!,
                c.GetProperty("signs").EnumerateObject().ToDictionary(s => s.Name, s => s.Value.GetString()!))),
        ];
    }
}
