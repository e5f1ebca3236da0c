using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Electrical;
using ColdSim.Model.Gas;
using ColdSim.Model.Heaters;
using ColdSim.Model.Site;
using ColdSim.Planning;
using ColdSim.Planning.Actions;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using Xunit;

namespace ColdSim.Tests.Planning.Actions;

/// <summary>Which actions a rig has room for, and what each makes of it.</summary>
public class CandidateActionTests
{
    private static readonly ClockWindow AtNight = new(22 * 3600, 6 * 3600);

    private static readonly RunReport TwoCylinders = NightRun.Of(Rigs.Scenario(
        Rigs.Heated() with
        {
            Site = new SiteSpecification { Latitude_deg = 45, Longitude_deg = -112 },
            Cylinders = [Rigs.Bottle("20 lb", 0.3), Rigs.Bottle("20 lb", 0.5) with { Label = "right" }],
            Coach = Rigs.TwoNodes() with { Covers_W_K = 20, CoverHours = [AtNight] },
            Appliances = [Rigs.Draw(2_000)],
            Heaters = [new OtherHeater { Name = "stove", Output_W = 800, Supply = HeaterSupply.OwnFuel, Hours = [AtNight] }],
            Power = new PowerSpecification
            {
                Battery = BatterySpecification.Of(BatteryChemistry.Agm, 100 * NominalVoltage.AmpereHour_J),
                Panels = [new SolarPanelSpecification { Rated_W = 200, SnowCover_frac = 1 }],
                Loads = [new ElectricLoad { Name = "lights", Power_W = 20 }],
                Generator = new GeneratorSpecification { Rated_W = 2800, Hours = [AtNight] },
            },
        },
        Rigs.Steady(-5), nights: 1));

    private static readonly RunReport OneCylinder = NightRun.Of(Rigs.Scenario(
        Rigs.Heated() with
        {
            Cylinders = [Rigs.Bottle("20 lb", 0.5)],
            Power = new PowerSpecification { Battery = BatterySpecification.Of(BatteryChemistry.Agm, 100 * NominalVoltage.AmpereHour_J) },
        },
        Rigs.Steady(-5), nights: 1));

    private static readonly RunReport Blend = NightRun.Of(Rigs.Scenario(
        Rigs.Heated() with
        {
            Cylinders = [Rigs.Bottle("20 lb", 0.5)],
            Gas = new GasSpecification { Composition = GasGrade.Summer.Composition, Name = GasGrade.Summer.Name },
        },
        Rigs.Steady(5), nights: 1));

    public static TheoryData<ActionKind> Kinds => [.. Enum.GetValues<ActionKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_is_tried_where_there_is_room_for_it_and_changes_only_what_it_says(ActionKind kind)
    {
        RunReport report = kind == ActionKind.PurePropane ? Blend
            : kind is ActionKind.SecondChangeover or ActionKind.SecondOpen or ActionKind.Generator ? OneCylinder : TwoCylinders;
        CandidateAction action = Of(report, Verdict.GasShort, Verdict.BatteryFlat).First(a => a.Kind == kind);
        Rig before = report.Scenario.Rig, after = action.Build(report.Scenario, action.Amounts[0]).Rig;
        Rig back = Undone(kind, before, after);
        Assert.Equal(before.ToString(), (back with { Cylinders = before.Cylinders }).ToString());
        Assert.NotEqual((before, kind), (after, kind));
        Assert.True(DoesWhatItSays(kind, before, after, action.Amounts[0]), $"{kind}: {after}");
    }

    [Fact]
    public void Set_points_are_whole_degrees_of_the_person_and_never_below_forty_one()
    {
        double[] us = [.. AmountGrid.Us.SetPointsBelow(288.15, 278.15).Select(k => k * 1.8 - 459.67)];
        Assert.Equal(58, us[0], 6);
        Assert.Equal(41, us[^1], 6);
        double[] metric = AmountGrid.Metric.SetPointsBelow(288.15, 278.15);
        Assert.Equal(14.5, metric[0] - 273.15, 6);
        Assert.Equal(5, metric[^1] - 273.15, 6);
        Assert.Empty(AmountGrid.Metric.SetPointsBelow(278.15, 278.15));
    }

    [Fact]
    public void Amounts_are_whole_steps_up_to_the_first_that_reaches_the_end()
        => Assert.Equal([5, 10, 15], AmountGrid.Upwards(3, 12, 5));

    [Fact]
    public void Nothing_is_filled_past_the_legal_filling_and_no_third_cylinder_is_carried()
    {
        Scenario scenario = TwoCylinders.Scenario;
        CandidateAction[] all = [.. Of(TwoCylinders, Verdict.GasShort)];
        CandidateAction topUp = all.Single(a => a.Kind == ActionKind.TopUp);
        Assert.All(topUp.Build(scenario, topUp.Amounts[^1]).Rig.Cylinders, c => Assert.Equal(c.LegalFill_kg, c.Contents_kg, 9));
        Assert.DoesNotContain(all, a => a.Kind is ActionKind.SecondChangeover or ActionKind.SecondOpen);
        RunReport heavy = OneCylinder with
        {
            Scenario = OneCylinder.Scenario with { Rig = OneCylinder.Scenario.Rig with { Cylinders = [Rigs.Bottle("100 lb", 0.5)] } },
        };
        Assert.DoesNotContain(Of(heavy, Verdict.GasShort), a => a.Kind is ActionKind.SecondChangeover or ActionKind.SecondOpen or ActionKind.Size);
        Assert.False(ComparedOption.IsTooLargeToCarry(Rigs.Bottle("40 lb")));
        Assert.True(ComparedOption.IsTooLargeToCarry(Rigs.Bottle("100 lb")));
    }

    [Fact]
    public void More_gas_is_not_tried_where_only_battery_or_furnace_fail()
    {
        Assert.DoesNotContain(Of(OneCylinder, Verdict.BatteryFlat), a => a.Kind is ActionKind.TopUp or ActionKind.Blanket or ActionKind.Size or ActionKind.Regulator);
        Assert.DoesNotContain(Of(OneCylinder, Verdict.GasGone), a => a.Kind is ActionKind.Battery or ActionKind.MorePanels);
        Assert.Equal([ActionKind.ShorePower], Of(OneCylinder, Verdict.FurnaceStopped).Select(a => a.Kind));
    }

    [Fact]
    public void A_cylinder_first_keeps_its_place_in_the_file()
    {
        CandidateAction first = Of(TwoCylinders, Verdict.GasShort).Single(a => a.Kind == ActionKind.CylinderFirst);
        Scenario after = first.Build(TwoCylinders.Scenario, 1);
        Assert.Equal("right", after.Rig.NameOf(0));
        Assert.Equal([1, 0], after.FilePlaces);
        Assert.Equal("right", first.Change(0).Name);
    }

    private static IEnumerable<CandidateAction> Of(RunReport report, params Verdict[] verdicts)
        => ActionPlan.Candidates(report with { Nights = [.. verdicts.Select(v => report.Nights[0] with { Verdict = v })] }, AmountGrid.Us);

    // The rig with the one thing that an action changes put back; cylinders are compared by what the action says.
    private static Rig Undone(ActionKind kind, Rig before, Rig after) => kind switch
    {
        ActionKind.WindowCovers => after with { Coach = before.Coach },
        ActionKind.BothOpen or ActionKind.SecondChangeover or ActionKind.SecondOpen => after with { Arrangement = before.Arrangement },
        ActionKind.PanelsClear or ActionKind.LoadOff or ActionKind.GeneratorOff or ActionKind.GeneratorAnyHour or ActionKind.MorePanels or ActionKind.Battery
            or ActionKind.Generator => after with { Power = before.Power },
        ActionKind.ApplianceOff => after with { Appliances = before.Appliances },
        ActionKind.OtherHeater => after with { Heaters = before.Heaters },
        ActionKind.NightSetPoint or ActionKind.DaySetPoint => after with { Thermostat = before.Thermostat },
        ActionKind.PurePropane => after with { Gas = before.Gas },
        ActionKind.ShorePower => after with { Site = before.Site },
        ActionKind.Regulator => after with { Regulator = before.Regulator },
        _ => after,
    };

    private static bool DoesWhatItSays(ActionKind kind, Rig before, Rig after, double amount) => kind switch
    {
        ActionKind.WindowCovers => after.Coach!.CoverHours.Count == 0,
        ActionKind.CylinderFirst => after.Cylinders[0] == before.Cylinders[1] && after.Cylinders[1] == before.Cylinders[0],
        ActionKind.BothOpen => after.Arrangement is OpenTogether,
        ActionKind.PanelsClear => after.Power!.Panels[0].SnowCover_frac == 0,
        ActionKind.ApplianceOff => after.Appliances[0].IsOff,
        ActionKind.LoadOff => after.Power!.Loads.Count == 0,
        ActionKind.GeneratorOff => after.Power!.Generator is null,
        ActionKind.GeneratorAnyHour => after.Power!.Generator!.Hours.Count == 0,
        ActionKind.OtherHeater => after.Heaters[0].Hours.Count == 0,
        ActionKind.NightSetPoint => after.Thermostat == before.Thermostat! with { NightSetPoint_K = amount } && amount < before.Thermostat.NightSetPoint_K,
        ActionKind.DaySetPoint => after.Thermostat == before.Thermostat! with { DaySetPoint_K = amount } && amount < before.Thermostat.DaySetPoint_K,
        ActionKind.TopUp => after.Cylinders.Zip(before.Cylinders).All(c => Math.Abs(c.First.Contents_kg - c.Second.Contents_kg - Rigs.Pound_kg) < 1e-9),
        ActionKind.Blanket => after.Cylinders.All(c => c.Blanket!.Power_W == 5),
        ActionKind.PurePropane => !after.Gas.IsMixed && after.Cylinders[0].Contents_kg == before.Cylinders[0].Contents_kg,
        ActionKind.SecondChangeover => after is { Cylinders.Count: 2, Arrangement: AutomaticChangeover } && IsFull(after, 1),
        ActionKind.SecondOpen => after is { Cylinders.Count: 2, Arrangement: OpenTogether } && IsFull(after, 1),
        ActionKind.Size => after.Cylinders.All(c => c.Name == "30 lb") && IsFull(after, 0),
        ActionKind.ShorePower => after.Site.Hookup,
        ActionKind.MorePanels => after.Power!.Panels is [_, { Rated_W: 50, SnowCover_frac: 0 }],
        ActionKind.Battery => after.Power!.Battery == before.Power!.Battery with { Rated_J = 125 * NominalVoltage.AmpereHour_J },
        ActionKind.Generator => after.Power!.Generator is { Rated_W: 2800 },
        ActionKind.Regulator => after.Regulator.RatedFlow_W > before.Regulator.RatedFlow_W,
        _ => false,
    };

    private static bool IsFull(Rig rig, int cylinder) => rig.Cylinders[cylinder].Contents_kg == rig.Cylinders[cylinder].LegalFill_kg;
}
