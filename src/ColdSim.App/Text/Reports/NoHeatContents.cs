using ColdSim.Planning.Diagnosis;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Reports;

/// <summary>What a report says for the hour in which the furnace will not light, when nothing has been seen yet.</summary>
/// <param name="At">The coldest minute of the run.</param>
/// <param name="Air_K">The air then. [K]</param>
/// <param name="Model">What the model says of the rig.</param>
/// <param name="Expected">What should be seen of the cylinder then, in each of its states.</param>
/// <param name="Tests">What to look at first, the most telling for its trouble first.</param>
internal sealed record NoHeatContents(
    DateTimeOffset At, double Air_K, CylinderExpectation Model, IReadOnlyList<CylinderState> Expected, IReadOnlyList<NextTest> Tests)
{
    /// <summary>Works it out from a run, at its coldest minute and with the use of the hours before.</summary>
    public static NoHeatContents Of(RunReport run)
    {
        RunMoment coldest = RunMoment.Coldest(run.Scenario.Rig, run.Series);
        DiagnosisRig rig = DiagnosisRig.Of(run.Scenario.Rig) with { Use_frac = coldest.Lit_frac ?? DiagnosisRig.UsualUse_frac };
        DiagnosisQuestion question = new() { Rig = rig, Readings = new() { Air_K = coldest.Air_K } };
        CylinderExpectation model = new(rig);
        return new(
            run.Scenario.Start.AddMinutes(coldest.Minute), coldest.Air_K, model,
            DiagnosisReport.States(model, coldest.Air_K, coldest.Left_frac), DiagnosisReport.Ask(question));
    }
}
