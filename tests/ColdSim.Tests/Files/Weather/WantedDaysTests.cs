using System.Globalization;
using System.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Weather;
using Xunit;

namespace ColdSim.Tests.Files.Weather;

public class WantedDaysTests
{
    private static readonly DateTimeOffset Day = new(2031, 1, 10, 0, 0, 0, TimeSpan.Zero);

    // Ten days of hours with a fault on the second day, a gap on the third, and both again on the ninth.
    private static string Table(bool faultInside = false)
    {
        StringBuilder text = new("time,air [°C]\n");
        for (int hour = 0; hour < 240; hour++)
        {
            if (hour is (>= 50 and < 60) or (>= 200 and < 220))
                continue;
            string air = hour is 30 or 195 || (faultInside && hour == 100) ? "cold" : (-hour % 24).ToString(CultureInfo.InvariantCulture);
            text.Append(CultureInfo.InvariantCulture, $"{Day.AddHours(hour):yyyy-MM-dd'T'HH:mm}Z,{air}\n");
        }

        return text.ToString();
    }

    private static WeatherRequest Wanted(int from, int to) => new() { Wanted = (Day.AddHours(from), Day.AddHours(to)) };

    [Fact]
    public void Faults_and_gaps_outside_the_days_wanted_refuse_nothing()
    {
        Assert.Equal(4, Samples.Read(Table()).Problems.Count);
        WeatherResult read = Samples.Good(Table(), Wanted(70, 180));
        Assert.Equal((Day.AddHours(60), Day.AddHours(199)), (read.Rows[0].Time, read.Rows[^1].Time));
        Assert.Equal(139, read.Rows.Count);
        Assert.Equal(["w:32: the first of 2 faults outside the days wanted; what is faulty there is left out"], read.Warnings);
        Assert.Contains("w: nothing between 2031-01-12T01:00+00:00 and 2031-01-12T12:00+00:00, 11 h; rows before it are not used, they lie before the days wanted", read.Notes);
        Assert.Contains("w: nothing between 2031-01-18T07:00+00:00 and 2031-01-19T04:00+00:00, 21 h; rows after it are not used, they lie after the days wanted", read.Notes);
    }

    [Fact]
    public void Faults_and_gaps_within_the_days_wanted_are_told_as_before()
    {
        Assert.Equal(
            "w:92:19: air [°C]: 'cold' is not a number; accepted: a number, or nothing where it is not known", Assert.Single(Samples.Read(Table(faultInside: true), Wanted(70, 180)).Problems).ToString());
        Assert.StartsWith("nothing between 2031-01-12T01:00+00:00", Assert.Single(Samples.Read(Table(), Wanted(40, 180)).Problems).What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_window_passes_over_faults_outside_it_too()
    {
        WeatherRequest window = new() { From = WindowEdge.Read("2031-01-13", endOfDay: false), To = WindowEdge.Read("2031-01-16", endOfDay: true) };
        Assert.Equal(97, Samples.Good(Table(), window).Rows.Count);
        Assert.Equal(["w:32: a fault outside the days wanted; what is faulty there is left out"], Samples.Good(Table(), window).Warnings);
    }

    [Fact]
    public void A_faulty_cell_in_another_month_of_a_typical_year_refuses_no_night()
    {
        string text = Samples.EpwOf([(2031, 1, 30), (2031, 1, 31), (2031, 2, 1)]).Replace("2031,2,1,20,60,?9,-12.0", "2031,2,1,20,60,?9,cold", StringComparison.Ordinal);
        Assert.Single(Samples.Read(text).Problems);
        WeatherRequest january = new() { Wanted = (new(2031, 1, 30, 12, 0, 0, TimeSpan.FromHours(-7)), new(2031, 1, 31, 12, 0, 0, TimeSpan.FromHours(-7))) };
        Assert.Equal(71, Samples.Good(text, january).Rows.Count);
        Assert.Single(Samples.Read(text, january with { Wanted = (january.Wanted.Value.From, january.Wanted.Value.To.AddDays(2)) }).Problems);
    }

    [Fact]
    public void Sun_that_is_missing_is_an_assumption_and_no_warning()
    {
        string nulls = Samples.OpenMeteo.Replace(",100.0\n", ",NaN\n", StringComparison.Ordinal).Replace(",300.0\n", ",NaN\n", StringComparison.Ordinal).Replace(",0.0\n", ",NaN\n", StringComparison.Ordinal);
        foreach (string table in (string[])[Table().Replace(",cold", ",1", StringComparison.Ordinal)[..600], nulls, PublisherSamples.PvgisPanel])
        {
            ReadResult read = Fixtures.Read("[weather]\nfile = \"w.csv\"\nbridge = \"9 h\"\n[cylinder]\nsize = \"20 lb\"\n", table[..(table.LastIndexOf('\n') + 1)]);
            Assert.Equal([], read.Problems);
            Assert.DoesNotContain(read.Warnings, w => w.Contains("sun", StringComparison.Ordinal));
            Assert.Single(read.Scenario!.Assumptions, a => a.StartsWith("sun: not in the weather file; assumed 0 W/m²", StringComparison.Ordinal));
            Assert.DoesNotContain(read.Scenario.Assumptions, a => a.Contains("sun is empty", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_run_asks_only_for_its_own_days()
    {
        const string scenario = "[weather]\nfile = \"w.csv\"\n[run]\nstart = 2031-01-13T16:00:00Z\nnights = 2\n[cylinder]\nsize = \"20 lb\"\n";
        ReadResult read = Fixtures.Read(scenario, Table());
        Assert.Equal([], read.Problems);
        Assert.Equal(Day.AddHours(60), read.Scenario!.Weather.First);
        Assert.NotEmpty(Fixtures.Faults(scenario.Replace("nights = 2\n", "nights = 6\n", StringComparison.Ordinal), Table()));
    }
}
