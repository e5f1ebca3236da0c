using ColdSim.App.Text;
using ColdSim.Files.Signs;
using ColdSim.Planning;
using ColdSim.Planning.Diagnosis;

namespace ColdSim.App.Commands;

/// <summary>Asks a person at a terminal what is seen and heard: safety first, then what tells most for its trouble, until the answer is
/// clear.</summary>
internal static class DiagnoseInterview
{
    private const int MostQuestions = 9;
    private const int MostTries = 3;

    // Clear enough to stop asking.
    private const double Clear_frac = 0.9;

    /// <summary>The answers, by the options' names, added to what was given; or an emergency.</summary>
    /// <param name="given">What is known already; receives the answers.</param>
    /// <param name="rig">The person's rig.</param>
    /// <param name="host">Where a person answers.</param>
    public static Emergency Ask(Dictionary<string, string> given, Scenario? rig, Host host)
    {
        host.Error.WriteLine("Enter is \"don't know\"; Ctrl-C ends it.");
        if (IsYes($"{DiagnosisWords.SmellQuestion} [no]: ", host))
            return Emergency.GasSmell;
        if (IsYes($"{DiagnosisWords.CarbonMonoxideQuestion} [no]: ", host))
            return Emergency.CarbonMonoxide;
        HashSet<string> asked = [.. given.Keys];
        if (asked.Add("air"))
            Put("air", DiagnosisWords.AirQuestion, given, rig, host);
        for (int i = 0; i < MostQuestions; i++)
        {
            DiagnosisQuestion question = new SignReader(given, rig).Question();
            if (question.HasEvidence && DiagnosisReport.Of(question).Causes[0].Probability_frac >= Clear_frac)
                break;
            if (DiagnosisReport.Ask(question).FirstOrDefault(t => !asked.Contains(DiagnosisWords.OptionOf(t))) is not { } test)
                break;
            string name = DiagnosisWords.OptionOf(test);
            asked.Add(name);
            if (!Put(name, DiagnosisWords.QuestionOf(test), given, rig, host))
                break;
        }

        return Emergency.None;
    }

    // Whether there may be further answers.
    private static bool Put(string name, string text, Dictionary<string, string> given, Scenario? rig, Host host)
    {
        for (int i = 0; i < MostTries; i++)
        {
            host.Error.Write($"{text}\n   [don't know]: ");
            host.Error.Flush();
            if (host.Answer!() is not { } answer)
                return false;
            if (answer.Trim() is "" or "?")
                return true;
            Dictionary<string, string> tried = new(given, StringComparer.Ordinal) { [name] = answer.Trim() };
            SignReader input = new(tried, rig);
            input.Question();
            if (input.Faults.Count == 0)
            {
                given[name] = answer.Trim();
                return true;
            }

            foreach (SignFault fault in input.Faults)
                host.Error.WriteLine($"   --{fault.Name}: {fault.What}");
        }

        return true;
    }

    private static bool IsYes(string text, Host host)
    {
        host.Error.Write(text);
        host.Error.Flush();
        return host.Answer!()?.Trim() is ['y' or 'Y', ..];
    }
}
