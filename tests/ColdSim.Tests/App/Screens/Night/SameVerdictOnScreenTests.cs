using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Night;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Screens.Night;

/// <summary>The screen says of every night of every demo what the answer says: the verdict, when it first fails, and the lowest inside.</summary>
public class SameVerdictOnScreenTests
{
    public static TheoryData<string> Demos => [.. Directory.EnumerateFiles(DocPage.Scenarios, "*.toml").Select(p => Path.GetFileName(p)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_screen_and_the_answer_agree_on_every_night(string demo)
    {
        RunReport report = RunWithRefills.Of(ColdSim.Files.Scenarios.ScenarioReader.Read(Shell.Demo(demo)).Scenario!).Report;
        FrameView view = new([new NightPage(NightView.Open(report, UnitStyle.Us))], UnitStyle.Us);
        while (((NightPage)view.Pages[0]).View.Night > 0)
            view = view.Update(new FrameMessage.ToPage(new PageMessage.NextNight(-1)));
        foreach (NightReport night in report.Nights)
        {
            string screen = FrameSheet.Draw(view, 240, 60).ToString();
            Assert.Contains(VerdictWords.Heading(night.Verdict), screen, StringComparison.Ordinal);
            Assert.Equal(night.Verdict == Verdict.Holds ? "holds" : $"FAILS: {VerdictWords.Short(night.Verdict)} {ClockText.Clock(night.FirstFailure!.Value)}", NightOutcome.Short(night));
            if (night.FirstFailure is { } at)
                Assert.Matches($"{VerdictWords.Heading(night.Verdict)} (?:[A-Z][a-z]{{2}} )?{ClockText.Clock(at)}", screen);
            if (night.InsideLow is { } low)
                Assert.Contains($"inside low {UnitStyle.Us.Temperature(low.Kelvins)}", screen, StringComparison.Ordinal);
            view = view.Update(new FrameMessage.ToPage(new PageMessage.NextNight(1)));
        }
    }
}
