using System.Globalization;
using ColdSim.App;
using ColdSim.App.Commands;
using ColdSim.Model.Weather;
using ColdSim.Planning.Ensemble;
using ColdSim.Tests.Planning.Ensemble;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class ChanceCommandTests
{
    [Fact]
    public void A_chance_in_us_units() => Snapshot.Match(Printed(HandChances.Report, "--members", "1000"));

    [Fact]
    public void A_chance_in_si_units() => Snapshot.Match(Printed(HandChances.Report, "--members", "1000", "--units", "si"));

    [Fact]
    public void A_chance_by_years() => Snapshot.Match(Printed(HandChances.ByYears, "--members", "12"));

    [Fact]
    public void One_year_alone_is_no_years()
    {
        ChanceReport one = HandChances.ByYears with { Asked = 1, Done = 1, Years = [2027], AllNights = new Proportion(0, 1) };
        string printed = Printed(one, "--members", "12");
        Assert.Contains("1 year of a record, 2027.", printed, StringComparison.Ordinal);
        Assert.Contains("in 0 of 1 year: ", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_wider_than_eighty_columns()
    {
        foreach (ChanceReport report in (ChanceReport[])[HandChances.Report, HandChances.ByYears, HandChances.Report with { Done = 40 }])
            Assert.All(Printed(report, "--members", "1000").Split('\n'), l => Assert.InRange(l.Length, 0, 80));
    }

    [Fact]
    public void An_interrupted_ensemble_prints_what_is_done_and_ends_so()
    {
        Shell shell = Ending(HandChances.Report with { Done = 312, AllNights = new(120, 312) });
        Assert.Equal(130, shell.Run("run", Shell.AnyFile, "--members", "1000"));
        Assert.Contains("Interrupted after 312 of 1,000 members", shell.Out, StringComparison.Ordinal);
        Assert.Contains("interrupted after 312 of 1000", shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--members", "0")]
    [InlineData("--members", "1.5")]
    [InlineData("--seed", "3")]
    [InlineData("--members", "10", "--csv", "x.csv")]
    [InlineData("--members", "10", "--years", "x.epw")]
    [InlineData("--years", "not-there.epw")]
    public void What_does_not_go_together_is_refused(params string[] words) => Assert.Equal(2, new Shell().Run(["run", Shell.AnyFile, .. words]));

    [Fact]
    public void A_chance_below_the_threshold_fails_when_that_is_asked()
    {
        Assert.Equal(1, Ending(HandChances.Report).Run("run", Shell.AnyFile, "--members", "10", "--fail-if-short"));
        Assert.Equal(0, Ending(HandChances.ByYears).Run("run", Shell.AnyFile, "--members", "10", "--fail-if-short"));
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
        string text = string.Join(' ', Printed(report, "--members", "12").Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(
            ", without 2001 (the record begins in these days), 2003 and 2005 to 2007 (the record has a gap of over 3 h in these days) and 2030 (the record ends in these days).",
            text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_one_document_and_nothing_else()
    {
        Shell shell = Ending(HandChances.Report);
        Assert.Equal(0, shell.Run("run", Shell.AnyFile, "--members", "10", "--json"));
        Assert.Equal(Shell.Document, shell.Out);
    }

    [Fact]
    public void A_record_whose_times_have_no_offset_is_on_the_scenarios_clock_and_its_years_are_those_of_one_reading()
    {
        // Only a time in the second winter has no offset, so that the first reading has taken a year when it ends in a problem.
        string text = "time,air [°C]\n" + string.Concat(Enumerable.Range(0, 2 * 365 * 8).Select(i => First.AddHours(3 * i)).Select(
            t => t.ToString(t.Year == 2022 ? "yyyy-MM-dd'T'HH:mm" : "yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture) + ",-5\n"));
        RecordYears years = Read(text, out Shell shell, out int code)!;
        Assert.Equal((0, ""), (code, shell.Error));
        Assert.Equal([2021, 2022], years.Years.Select(y => y.Year));
        Assert.All(years.Rows, r => Assert.Equal(TimeSpan.FromHours(-7), r.Time.Offset));
    }

    [Fact]
    public void A_record_that_cannot_be_read_is_reported_with_its_place_and_nothing_is_run()
    {
        Assert.Null(Read("time,air [°C]\n2021-01-01T00:00-07:00,cold\n", out Shell shell, out int code));
        Assert.Equal(2, code);
        Assert.Contains(":2:24: ", shell.Error, StringComparison.Ordinal);
        Assert.Contains("nothing was run", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_a_record_ends_when_it_is_interrupted()
    {
        using CancellationTokenSource interrupted = new();
        interrupted.Cancel();
        YearsRoute route = new(Days, interrupted.Token);
        Assert.Throws<OperationCanceledException>(() => route.Take(new WeatherRow(First, 260)));
    }

    private static readonly DateTimeOffset First = new(2020, 12, 1, 0, 0, 0, TimeSpan.FromHours(-7));

    private static RecordDays Days => new(new(2027, 1, 12, 16, 0, 0, TimeSpan.FromHours(-7)), TimeSpan.FromDays(2));

    private static RecordYears? Read(string record, out Shell shell, out int code)
    {
        RecordYears? years = null;
        string path = Path.GetTempFileName();
        try
        {
            File.WriteAllText(path, record);
            shell = new();
            shell.Parts = shell.Parts with
            {
                ReadWeather = Joined.Parts().ReadWeather,
                Chance = (_, _, wish, _, cancel) =>
                {
                    years = wish.Record!(Days, cancel);
                    return HandChances.ByYears;
                },
            };
            code = shell.Run("run", Shell.AnyFile, "--years", path);
            return years;
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static Shell Ending(ChanceReport report)
    {
        Shell shell = new();
        shell.Parts = shell.Parts with { Chance = (_, _, _, _, _) => report };
        return shell;
    }

    private static string Printed(ChanceReport report, params string[] words)
    {
        Shell shell = Ending(report);
        shell.Run(["run", Shell.AnyFile, .. words]);
        return shell.Out;
    }
}
