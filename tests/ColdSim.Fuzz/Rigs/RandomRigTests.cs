using System.Globalization;
using Xunit;
using Xunit.Abstractions;

namespace ColdSim.Fuzz.Rigs;

public class RandomRigTests(ITestOutputHelper output)
{
    // The rigs at the ends of the report.
    private const int Named = 12;

    [Fact]
    public void Every_legal_rig_gets_an_answer()
    {
        RigAnswer[] answers = new RigAnswer[FuzzOptions.Rigs];
        string root = Directory.CreateTempSubdirectory("coldsim-rigs").FullName;
        try
        {
            Parallel.For(0, answers.Length, new ParallelOptions { MaxDegreeOfParallelism = Math.Min(2, Environment.ProcessorCount) }, i =>
            {
                string folder = Path.Combine(root, Environment.CurrentManagedThreadId.ToString(CultureInfo.InvariantCulture));
                answers[i] = RigAnswer.Of(RigDraw.Of(FuzzOptions.First + i), folder);
            });

            // A machine that is busy with something else makes every rig slow.
            for (int i = 0; i < answers.Length; i++)
            {
                if (answers[i].Time > RigAnswer.Longest) answers[i] = RigAnswer.Of(answers[i].Rig, root, alone: true);
            }
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }

        Report(answers);
        RigAnswer[] failed = [.. answers.Where(a => a.Fault is not null)];
        foreach (RigAnswer answer in failed)
            RigAnswer.Write(answer.Rig, Path.Combine(FuzzOptions.Keep, "rig-" + answer.Rig.Number.ToString(CultureInfo.InvariantCulture)));
        Assert.True(failed.Length == 0, $"{failed.Length} of {answers.Length} failed; kept in {FuzzOptions.Keep}:\n"
            + string.Join('\n', failed.Take(20).Select(a => $"rig {a.Rig.Number}: {a.Fault}")));
    }

    [Fact]
    public void A_rig_is_the_same_whenever_it_is_drawn()
        => Assert.Equal(RigDraw.Of(FuzzOptions.First), RigDraw.Of(FuzzOptions.First));

    private void Report(RigAnswer[] answers)
    {
        string codes = string.Join(", ", answers.GroupBy(a => a.Code).OrderBy(g => g.Key).Select(g => $"{g.Count()} ended with {g.Key}"));
        double[] residuals = [.. answers.Select(a => a.Residual_frac).Where(double.IsFinite).Order()];
        RigAnswer slowest = answers.MaxBy(a => a.Time)!;
        string text = string.Create(
            CultureInfo.InvariantCulture,
            $"{answers.Length} rigs from number {FuzzOptions.First}: {codes}. Energy residual per throughput: median {residuals[residuals.Length / 2]:0.0e0}, 99 % {residuals[(int)(0.99 * (residuals.Length - 1))]:0.0e0}, worst {residuals[^1]:0.0e0} (rig {answers.MaxBy(a => a.Residual_frac)!.Rig.Number}). Slowest: rig {slowest.Rig.Number}, {slowest.Time.TotalSeconds:0.00} s.");
        text += "\nWorst residuals: " + string.Join(", ", answers.Where(a => double.IsFinite(a.Residual_frac)).OrderByDescending(a => a.Residual_frac).Take(Named).Select(
            a => string.Create(CultureInfo.InvariantCulture, $"rig {a.Rig.Number} {a.Residual_frac:0.0e0}")));
        text += "\nLongest: " + string.Join(", ", answers.OrderByDescending(a => a.Time).Take(Named).Select(
            a => string.Create(CultureInfo.InvariantCulture, $"rig {a.Rig.Number} {a.Time.TotalSeconds:0.00} s")));
        output.WriteLine(text);
        if (FuzzOptions.Report is { } path) File.WriteAllText(path, text + "\n");
    }
}
