using Xunit;

namespace ColdSim.Validation.ClosedForms;

public class ClosedFormTests
{
    public static TheoryData<string> Draws => [.. DrawnCases.Files("draw")];

    public static TheoryData<string> Coolings => [.. DrawnCases.Files("cooling")];

    public static TheoryData<string> Duties => [.. DrawnCases.Files("duty")];

    public static TheoryData<string> Weeks => [.. DrawnCases.Files("week")];

    [Fact]
    public void The_files_are_those_that_the_seed_draws()
    {
        foreach ((string file, string text) in DrawnCases.All())
        {
            string path = Path.Combine(CaseRun.Folder, file);
            if (Environment.GetEnvironmentVariable(Tests.Docs.GeneratedPage.WriteVariable) == "1")
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllText(path, text.ReplaceLineEndings("\n"));
            }
            else
                Assert.Equal(text.ReplaceLineEndings("\n"), File.ReadAllText(path));
        }
    }

    [Theory]
    [MemberData(nameof(Draws))]
    public void Liquid_cools_along_the_closed_form_while_vapour_is_drawn(string file)
        => Assert.InRange(ClosedForm.Draw(file).Difference, -KindLimits.Draw_K_K, KindLimits.Draw_K_K);

    [Theory]
    [MemberData(nameof(Coolings))]
    public void A_coach_without_heat_cools_as_two_exponentials(string file)
        => Assert.InRange(ClosedForm.Cooling(file).Difference, -KindLimits.Cooling_K, KindLimits.Cooling_K);

    [Theory]
    [MemberData(nameof(Duties))]
    public void A_furnace_at_a_steady_load_burns_for_load_over_output_of_the_time(string file)
        => Assert.InRange(ClosedForm.Duty(file).Difference, -KindLimits.Duty_frac, KindLimits.Duty_frac);

    [Theory]
    [MemberData(nameof(Weeks))]
    public void What_went_in_over_a_week_is_what_was_lost_and_stored(string file)
        => Assert.InRange(ClosedForm.Week(file).Difference, -KindLimits.Week_frac, KindLimits.Week_frac);
}
