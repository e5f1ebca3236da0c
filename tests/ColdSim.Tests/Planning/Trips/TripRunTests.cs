using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using ColdSim.Tests.Model;
using ColdSim.Tests.Model.Cylinder;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Planning.Trips.SomeTrips;

namespace ColdSim.Tests.Planning.Trips;

/// <summary>Whole trips.</summary>
public class TripRunTests
{
    [Fact]
    public void A_trip_of_one_stop_without_refills_is_the_plain_run_to_the_last_bit()
    {
        TripStop stop = Stop("one", 0, 44);
        Scenario plain = Rigs.Scenario(Rigs.Heated() with { Site = stop.Site }, stop.Weather, 2);
        RunReport run = NightRun.Of(plain), trip = TripRun.Of(Of(plain.Rig, [stop])).Run;
        Assert.Equal(run.Nights.Count, trip.Nights.Count);
        Assert.Equal(run.Series.Propane_kg, trip.Series.Propane_kg);
        Assert.Equal(run.Series.Inside_K, trip.Series.Inside_K);
        Assert.Equal(run.Events, trip.Events);
        Assert.Equal(run.Summary, trip.Summary);
    }

    [Fact]
    public void Stop_cut_into_two_equal_ones_carries_its_state_over()
    {
        TripReport one = TripRun.Of(Of([Stop("a", 0, 44)])), two = TripRun.Of(Of([Stop("a", 0, 20), Stop("a", 20, 44)]));
        Assert.Equal(one.Run.Summary.GasUsed.Kilograms, two.Run.Summary.GasUsed.Kilograms, 6);
        for (int i = 0; i < 2; i++)
        {
            double[] a = one.Run.Series.Cylinders[i].Liquid_K, b = two.Run.Series.Cylinders[i].Liquid_K;
            Assert.All(Enumerable.Range(0, one.Run.Series.Count), s => Assert.Equal(a[s], b[s], 0.05));
        }
    }

    [Fact]
    public void A_refill_at_a_start_by_night_leaves_inside_at_the_set_point_in_force()
    {
        Rig rig = Rigs.Heated() with { Thermostat = Rigs.Holding(20, 14) };
        TripStop[] stops = [Stop("a", 7, 20)];
        double Inside_K(params Refill[] refills) => TripRun.Of(Of(rig, stops, refills) with { Start = stops[0].From }).Run.Series.Inside_K[0];
        Assert.Equal(287.15, Inside_K(), 9);
        Assert.Equal(287.15, Inside_K(Fill(7)), 9);
    }

    [Fact]
    public void Leg_on_the_road_uses_and_loses_no_gas()
    {
        TripReport report = TripRun.Of(Of([Stop("a", 0, 18), Stop("b", 24, 44, -20)]));
        RunSeries series = report.Run.Series;
        Assert.All(Enumerable.Range(18 * 60 + 1, 6 * 60 - 1), i => Assert.Equal(0, series.Given_W[i]));
        Assert.Equal(series.Propane_kg[18 * 60], series.Propane_kg[24 * 60], 9);
        Assert.Equal([0, 1], report.Nights.Select(n => n.Stop));
    }

    [Fact]
    public void Gas_adds_up_and_every_leg_closes()
        => Gen.Select(Gen.Double[0.1, 0.9], Gen.Int[1, 60], Gen.Int[1, 60], Gen.Double[-25, 5], Gen.Int[0, 3]).Sample((left, first_h, second_h, air_C, kinds) =>
        {
            Refill Kind(double at_h, int cylinder, bool exchange) => Fill(at_h, cylinder) with
            {
                Kind = exchange ? RefillKind.Exchange : RefillKind.Fill,
                ExchangeFill_kg = 6.8,
                Limit = (kinds & 1) == 0 ? FillLimit.Weight : FillLimit.Volume,
            };
            TripStop[] stops = [Stop("a", 0, 30, air_C), Stop("b", 34, 68, air_C - 5)];
            Refill[] refills = [Kind(first_h, 0, (kinds & 2) != 0), Kind(second_h, 1, false)];
            Scenario scenario = Of(ByHand(left), stops, [.. refills.OrderBy(r => r.At)]);
            RunWithRefills run = RunWithRefills.Of(scenario);
            Assert.True(run.Report.Ledger.Closes, run.Report.Ledger.ToString());
            Assert.Equal(RunEnd.Complete, run.Report.End);
            RunSummary summary = run.Report.Summary;
            double bought_kg = run.Refills.Sum(r => r.Bought_kg), behind_kg = run.Refills.Sum(r => r.LeftBehind_kg);
            Assert.Equal(
                summary.LeftAtEnd.Kilograms, summary.LeftAtStart.Kilograms + bought_kg - behind_kg - summary.GasUsed.Kilograms, 1e-9);
        }, iter: 20);

    [Fact]
    public void A_filled_cylinder_goes_on_from_what_was_in_it()
    {
        RunWithRefills run = RunWithRefills.Of(Of([Stop("a", 0, 44)], Fill(19) with { Limit = FillLimit.Weight }));
        RefillOutcome outcome = Assert.Single(run.Refills);
        RunSeries series = run.Report.Series;
        Assert.Equal(series.Cylinders[0].Propane_kg[19 * 60], outcome.Before.Propane_kg, 9);
        Assert.Equal(Pair().Cylinders[0].LegalFill_kg, outcome.After.Propane_kg, 9);
        Assert.True(series.Cylinders[0].Propane_kg[19 * 60 + 1] > outcome.Before.Propane_kg + 0.5);
        ReportedEvent filled = Assert.Single(run.Report.Events, e => e.Kind == ReportedKind.CylinderFilled);
        Assert.Equal((Start.AddHours(19), 0), (filled.Time, filled.Cylinder));
    }

    [Fact]
    public void An_exchange_brings_less_than_full_takes_the_rest_away_and_loses_the_frost()
    {
        RunWithRefills run = RunWithRefills.Of(Of([Stop("a", 0, 44)], Fill(19) with { Kind = RefillKind.Exchange, ExchangeFill_kg = 6.8, Price = Price.PerExchange(24) }));
        RefillOutcome outcome = Assert.Single(run.Refills);
        Assert.Equal((6.8, outcome.Before.Propane_kg, 24.0), (outcome.Bought_kg, outcome.LeftBehind_kg, outcome.Paid!.Value));
        Assert.Equal(263.15, outcome.After.Liquid_K, 9);
        Assert.Equal(0, run.Report.Series.Cylinders[0].FrostMass_kg_m2[19 * 60 + 1], 1e-3);
    }

    [Fact]
    public void Cylinder_past_its_requalification_date_is_not_filled()
    {
        DateOnly last = DateOnly.FromDateTime(Start.DateTime);
        CylinderSpecification[] due = [Rigs.Bottle("20 lb").Due(last), Rigs.Bottle("20 lb")];
        TripStop[] stops = [Stop("a", 0, 44)];
        TripReport refused = TripRun.Of(Of(Pair() with { Cylinders = due }, stops, Fill(19))), without = TripRun.Of(Of(stops));
        TripRefill refill = Assert.Single(refused.Refills);
        Assert.True(refill.Outcome!.Refused);
        Assert.Equal(WaitKind.Refused, refill.Wait.Kind);
        Assert.Null(refill.Carried);
        Assert.Equal(0, refused.Bought.Kilograms);
        Assert.Equal(without.Run.Summary.LeftAtEnd.Kilograms, refused.Run.Summary.LeftAtEnd.Kilograms, 1e-6);
        Assert.DoesNotContain(refused.Run.Events, e => e.Kind == ReportedKind.CylinderFilled);
    }

    [Fact]
    public void Cylinder_is_filled_on_its_last_day_and_an_exchanged_one_is_in_date()
    {
        DateOnly last = DateOnly.FromDateTime(Start.AddHours(19).DateTime);
        CylinderSpecification[] cylinders = [Rigs.Bottle("20 lb").Due(last), Rigs.Bottle("20 lb").Due(last)];
        Refill[] refills =
        [
            Fill(19), Fill(43), Fill(44) with { Kind = RefillKind.Exchange }, Fill(45), Fill(46, 1),
        ];
        Assert.Equal([false, true, false, false, true], Requalification.Refused(refills, cylinders));
    }

    [Fact]
    public void Twelve_years_after_manufacture_is_the_usual_last_day()
        => Assert.Equal(new DateOnly(2027, 6, 30), Requalification.LastDay(new DateOnly(2015, 6, 30), Requalification.Usual_years));

    [Fact]
    public void Usual_carry_is_the_load_constant() => Assert.Equal(51, Trip.UsualCarry_kg / 0.45359237, 0.5);

    [Fact]
    public void A_full_30_lb_cylinder_is_too_heavy_for_one_and_a_20_lb_one_is_not()
    {
        TripRefill Carried(string size) => TripRun.Of(Of(Pair() with { Cylinders = [Rigs.Bottle(size, 0.5), Rigs.Bottle(size)] }, [Stop("a", 0, 20)], Fill(19))).Refills[0];
        Assert.True(Carried("30 lb").TooHeavy);
        Assert.InRange(Carried("30 lb").Carried!.Value.Pounds, 54, 58);
        Assert.False(Carried("20 lb").TooHeavy);
        Assert.Null(Carried("20 gal").Carried);
    }

    [Fact]
    public void Money_is_what_is_paid_and_what_the_cylinders_hold_less()
    {
        Scenario scenario = Of([Stop("a", 0, 44)], Fill(19) with { Limit = FillLimit.Weight, Price = Price.PerMass(3, 1) }) with
        {
            Prices = new Prices { Gas = Price.PerMass(2, 1) },
        };
        TripReport report = TripRun.Of(scenario);
        double bought_kg = report.Bought.Kilograms, less_kg = report.Run.Summary.LeftAtStart.Kilograms - report.Run.Summary.LeftAtEnd.Kilograms;
        Assert.Equal(3 * bought_kg, report.Money.Paid!.Value, 9);
        Assert.Equal(2 * less_kg, report.Money.FromStock!.Value, 9);
        Assert.Equal(3 * bought_kg + 2 * less_kg, report.Money.Cost!.Value, 9);
        Assert.Null(TripRun.Of(Of([Stop("a", 0, 44)])).Money.Cost);
    }

    [Fact, Outside("common practice, no source", Field.Propane)]
    public void A_gallon_at_60_F_is_4_24_lb() => Assert.Equal(4.24, Price.PerMass(1, 0.45359237).Amount / Price.PerVolume(1, 0.003785411784).Amount, 0.02);

    [Fact]
    public void The_least_margin_is_below_zero_where_gas_runs_short_and_above_where_it_does_not()
    {
        TripReport holds = TripRun.Of(Of([Stop("a", 0, 20)]));
        Assert.Equal(Verdict.Holds, holds.Nights[0].Night.Verdict);
        Assert.True(holds.Nights[0].Margin!.Surplus.Watts > 0);
        TripReport dry = TripRun.Of(Of(ByHand(0.02), [Stop("a", 0, 20)]));
        Assert.NotEqual(Verdict.Holds, dry.Nights[0].Night.Verdict);
        Assert.True(dry.Nights[0].Margin!.Surplus.Watts < 0);
        Assert.Null(TripRun.Of(Of(Pair() with { Appliances = [] }, [Stop("a", 0, 20)])).Nights[0].Margin);
    }
}
