using ColdSim.Files.Scenarios.Starters;

namespace ColdSim.App.Commands;

/// <summary>Asks a person at a terminal about the rig; an answer that the scenario's reader refuses is asked again with what is accepted.</summary>
internal static class StarterInterview
{
    // Nobody is asked for ever; a program that answers is not helped by more.
    private const int MostTries = 5;

    /// <summary>The rig of the answers.</summary>
    /// <param name="path">Where the scenario goes.</param>
    /// <param name="metric">Whether examples and defaults are metric.</param>
    /// <param name="host">Where a person answers.</param>
    /// <exception cref="CommandFault">The person ended the questions; nothing is written.</exception>
    public static StarterRig Ask(string path, bool metric, Host host)
    {
        host.Error.WriteLine("Nine questions. Enter takes what is in brackets; ? is \"don't know\"; Ctrl-C ends it and writes nothing.");
        StarterRig rig = StarterRig.Unknown(metric);
        IReadOnlyList<StarterQuestion> questions = StarterQuestion.All(metric);
        for (int i = 0; i < questions.Count; i++)
            rig = Ask(questions[i], i + 1, rig, path, host);
        return rig;
    }

    private static StarterRig Ask(StarterQuestion question, int number, StarterRig rig, string path, Host host)
    {
        for (int i = 0; i < MostTries; i++)
        {
            host.Error.Write(FormattableString.Invariant($"{number}. {question.Text}\n   [{question.Default}]: "));
            host.Error.Flush();
            string answer = host.Answer!() ?? throw CommandFault.Input("coldsim: no more answers; nothing was written");
            if (StarterQuestion.IsUnknown(answer))
                return rig;
            StarterRig answered = question.Put(rig, answer.Trim());
            IReadOnlyList<string> faults = StarterFiles.Faults(answered, path, host.Clock.GetLocalNow(), host.Files.Open);
            if (faults.Count == 0)
                return answered;
            foreach (string fault in faults)
                host.Error.WriteLine($"   {fault}");
        }

        throw CommandFault.Input("coldsim: the answer was not understood; nothing was written", "See 'coldsim new --help' for the options.");
    }
}
