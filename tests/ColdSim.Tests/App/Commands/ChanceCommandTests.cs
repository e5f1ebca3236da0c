using System.Globalization;
using System.Text.Json;
using ColdSim.App.Commands;
using ColdSim.App.Text;
using ColdSim.Model.Weather;
using ColdSim.Planning.Ensemble;
using ColdSim.Tests.Files.Weather;
using ColdSim.Tests.Planning.Ensemble;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class ChanceCommandTests
{
    [Fact]
    public void A_chance_in_us_units() => Snapshot.Match(Printed(HandChances.Report));

    [Fact]
    public void A_chance_in_si_units() => Snapshot.Match(Printed(HandChances.Report, UnitStyle.Si));

    [Fact]
    public void A_chance_by_years() => Snapshot.Match(Printed(HandChances.ByYears));

    [Fact]
    public void One_year_alone_is_no_years()
    {
        ChanceReport one = HandChances.ByYears with { Asked = 1, Done = 1, Years = [2027], AllNights = new Proportion(0, 1) };
        string printed = Printed(one);
        Assert.Contains("1 year of a record, 2027.", printed, StringComparison.Ordinal);
        Assert.Contains("in 0 of 1 year: ", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chance_by_one_year_or_a_typical_one_warns_that_it_says_little()
    {
        string Text(ChanceReport report) => string.Join(' ', Printed(report).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        ChanceReport one = HandChances.ByYears with { Asked = 1, Done = 1, Years = [2027], AllNights = new Proportion(0, 1) };
        Assert.Contains("CAUTION: one year says little of a chance.", Text(one), StringComparison.Ordinal);
        Assert.Contains("CAUTION: this is a typical year, put together from months picked for being usual.", Text(one with { IsTypicalYear = true }), StringComparison.Ordinal);
        Assert.DoesNotContain("CAUTION", Text(HandChances.ByYears), StringComparison.Ordinal);
        Assert.DoesNotContain("CAUTION", Text(HandChances.Report), StringComparison.Ordinal);
    }

    [Fact]
    public void Years_are_read_with_whether_they_are_a_typical_one()
    {
        RecordYears Read(string name, string text)
        {
            using Host host = new(Stream.Null, TextWriter.Null) { Files = new HeldFiles { Texts = { [name] = text } } };
            return ChanceWork.ReadYears(name, Days, TimeSpan.FromHours(-7), host, CancellationToken.None);
        }

        Assert.True(Read("a.epw", Samples.Epw).IsTypicalYear);
        string csv = "time,air [°C]\n" + string.Concat(Enumerable.Range(0, 500).Select(i => First.AddHours(3 * i).ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture) + ",-5\n"));
        Assert.False(Read("own.csv", csv).IsTypicalYear);
    }

    [Fact]
    public void Nothing_is_wider_than_eighty_columns()
    {
        foreach (ChanceReport report in (ChanceReport[])[HandChances.Report, HandChances.ByYears, HandChances.Report with { Done = 40 }])
            Assert.All(Printed(report).Split('\n'), l => Assert.InRange(l.Length, 0, 80));
    }

    [Fact]
    public async Task An_interrupted_ensemble_prints_what_is_done_and_ends_so()
    {
        // So many that they are not done before a busy test run comes to show a sign of life.
        Shell shell = new();
        using CancellationTokenSource source = new();
        (shell.Terminal, shell.Clock) = (true, new HastyClock { Later = TimeSpan.FromMilliseconds(20) });
        shell.WhileWaiting = () =>
        {
            if (!shell.ErrorSoFar.EndsWith(", 0 of 20000 done", StringComparison.Ordinal))
                source.Cancel();
        };
        Assert.Equal(130, await shell.RunAsync(["run", Shell.ColdSnap, "--members", "20000"], source.Token));
        Assert.Matches("Interrupted after [0-9,]+ of 20,000: only these count", shell.Out);
        Assert.Matches("interrupted after [0-9]+ of 20000; the figures are of these\n$", shell.Error);
    }

    [Fact]
    public void Members_that_settle_a_chance_far_below_the_wanted_one_are_the_first_forty()
    {
        Shell shell = new();
        Assert.Equal(1, shell.Run("run", Shell.ColdSnap, "--members", "auto", "--json", "--fail-if-short"));
        JsonElement document = JsonDocument.Parse(shell.Out).RootElement, decision = document.GetProperty("decision");
        Assert.Equal(40, document.GetProperty("members").GetInt32());
        Assert.Equal("below", decision.GetProperty("side").GetString());
        Assert.InRange(decision.GetProperty("high").GetDouble(), 0.1, 0.9);
        Assert.Equal(10_000, decision.GetProperty("members_at_most").GetInt32());
    }

    [Fact]
    public void A_given_number_of_members_decides_nothing()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("run", Shell.ColdSnap, "--members", "2", "--json"));
        Assert.Equal(JsonValueKind.Null, JsonDocument.Parse(shell.Out).RootElement.GetProperty("decision").ValueKind);
    }

    [Theory]
    [InlineData(ChanceSide.Above, "That is above the 90 % that you want: settled after 1,000 members (within 36 to 47 %, by bounds that hold at every look).")]
    [InlineData(ChanceSide.Below, "That is below the 90 % that you want: settled after 1,000 members (within 36 to 47 %, by bounds that hold at every look).")]
    [InlineData(ChanceSide.Open, "Whether that is above or below the 90 % that you want is not settled after 1,000 members (within 36 to 47 %, by bounds that hold at every look).")]
    public void The_side_of_the_wanted_chance_is_said_with_its_bounds(ChanceSide side, string sentence)
    {
        string printed = Printed(HandChances.Report with { Decision = new SequentialDecision(side, 0.36, 0.47, 10_000) });
        Assert.Contains(sentence, string.Join(' ', printed.Split(['\n', ' '], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--members", "0")]
    [InlineData("--members", "1.5")]
    [InlineData("--members", "automatic")]
    [InlineData("--members", "Infinity")]
    [InlineData("--seed", "3")]
    [InlineData("--members", "10", "--csv", "x.csv")]
    [InlineData("--members", "10", "--years", "x.epw")]
    [InlineData("--years", "not-there.epw")]
    public void What_does_not_go_together_is_refused(params string[] words) => Assert.Equal(2, new Shell().Run(["run", Shell.ColdSnap, .. words]));

    [Fact]
    public void A_chance_below_the_threshold_fails_when_that_is_asked()
    {
        Assert.False(HandChances.Report.MeetsWantedChance);
        Assert.True(HandChances.ByYears.MeetsWantedChance);
        Assert.Equal(1, new Shell().Run("run", Shell.ColdSnap, "--members", "4", "--fail-if-short"));
        Assert.Equal(0, new Shell().Run("run", Shell.ColdSnap, "--members", "4"));
        Assert.Equal(1, new Shell().Run("run", Shell.Demo("lockout-at-three.toml"), "--members", "4", "--fail-if-short"));
        Assert.Equal(0, new Shell().Run("run", Shell.Demo("three-days.toml"), "--no-log", "--nights", "1", "--members", "4", "--fail-if-short"));
    }

    [Fact]
    public void Years_that_are_left_out_are_named_with_the_reason()
    {
        ChanceReport report = HandChances.ByYears with
        {
            YearsLeftOut =
            [
                new(2001, WhyLeftOut.Begins), new(2003, WhyLeftOut.Gap), new(2005, WhyLeftOut.Gap), new(2006, WhyLeftOut.Gap), new(2007, WhyLeftOut.Gap),
                new(2030, WhyLeftOut.Ends),
            ],
        };
        string text = string.Join(' ', Printed(report).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(
            ", without 2001 (the record begins in these days), 2003 and 2005 to 2007 (the record has a gap of over 3 h in these days) and 2030 (the record ends in these days).",
            text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_one_document_and_nothing_else()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("run", Shell.ColdSnap, "--members", "4", "--seed", "7", "--json"));
        using JsonDocument document = JsonDocument.Parse(shell.Out);
        Assert.Contains("assumed: ", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_whose_times_have_no_offset_is_on_the_scenarios_clock_and_its_years_are_those_of_one_reading()
    {
        // Only a time in the second winter has no offset, so that the first reading has taken a year when it ends in a problem.
        string text = "time,air [°C]\n" + string.Concat(Enumerable.Range(0, 2 * 365 * 8).Select(i => First.AddHours(3 * i)).Select(
            t => t.ToString(t.Year == 2022 ? "yyyy-MM-dd'T'HH:mm" : "yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture) + ",-5\n"));
        using Host host = new(Stream.Null, TextWriter.Null) { Files = new HeldFiles { Texts = { ["record.csv"] = text } } };
        RecordYears years = ChanceWork.ReadYears("record.csv", Days, TimeSpan.FromHours(-7), host, CancellationToken.None);
        Assert.Equal([2021, 2022], years.Years.Select(y => y.Year));
        Assert.All(years.Rows, r => Assert.Equal(TimeSpan.FromHours(-7), r.Time.Offset));
    }

    [Fact]
    public void A_record_that_cannot_be_read_is_reported_with_its_place_and_nothing_is_run()
    {
        Shell shell = new() { Files = new HeldFiles { Texts = { ["record.csv"] = "time,air [°C]\n2021-01-01T00:00-07:00,cold\n" } } };
        Assert.Equal(2, shell.Run("run", Shell.ColdSnap, "--years", "record.csv"));
        Assert.Equal("", shell.Out);
        Assert.Contains("record.csv:2:24: ", shell.Error, StringComparison.Ordinal);
        Assert.Contains("nothing was run", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_a_record_ends_when_it_is_interrupted()
    {
        using CancellationTokenSource interrupted = new();
        interrupted.Cancel();
        YearRows rows = new(Days, interrupted.Token);
        Assert.Throws<OperationCanceledException>(() => rows.Take(new WeatherRow(First, 260)));
    }

    private static readonly DateTimeOffset First = new(2020, 12, 1, 0, 0, 0, TimeSpan.FromHours(-7));

    private static RecordDays Days => new(new(2027, 1, 12, 16, 0, 0, TimeSpan.FromHours(-7)), TimeSpan.FromDays(2));

    private static string Printed(ChanceReport report, UnitStyle? units = null)
        => Shell.Printed(ChanceText.Sections(report, units ?? UnitStyle.Us, ["An invented caution."]));
}
