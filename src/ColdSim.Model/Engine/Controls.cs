using ColdSim.Model.Appliances;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Furnace;
using ColdSim.Model.Heaters;
using ColdSim.Model.Nodes;
using ColdSim.Model.Site;
using ColdSim.Model.Thermostat;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Engine;

/// <summary>All discrete controls of a rig, independent of each other.</summary>
internal sealed class Controls
{
    // The limit for compressed-gas cylinders, 125 °F; docs/sources.md.
    private const double Hot_K = 324.816_666_666_666_7;
    private const double HotBand_K = 1;

    // A reserve side that gives less than this counts as shut; the dead band keeps rounding errors from repeating the event.
    private const double ReserveFeeds_frac = 0.05;
    private const double ReserveRests_frac = 0.01;

    // Fraction that must thaw or freeze again before the same event of a node is repeated.
    private const double ThawedAgain_frac = 1e-3;
    private const double Dry_frac = 0.98;

    private readonly Rig _rig;

    public Controls(Rig rig, Plant plant, double undersupplied_frac)
    {
        _rig = rig;
        int n = rig.Cylinders.Count;
        Thermostat = rig.Thermostat is null || rig.Coach is null ? null : new ThermostatControl(rig.Thermostat);
        Furnace = rig.Furnace is null ? null : new FurnaceControl(rig.Furnace);
        Appliances = [.. rig.Appliances.Select(a => new ApplianceControl(a, rig.Site.Hookup))];
        Heaters = [.. rig.Heaters.Select(h => new HeaterControl(h, rig.Site.Hookup))];
        Liquid = [.. plant.Nodes.Select(n => new HysteresisComparator(ThawedAgain_frac * n.Latent_J, 0))];
        Solid = [.. plant.Nodes.Select(n => new HysteresisComparator(n.Latent_J, (1 - ThawedAgain_frac) * n.Latent_J))];
        Blankets = [.. rig.Cylinders.Select(c => c.Blanket is null ? null : new BlanketControl(c.Blanket, rig.Site.Hookup))];
        Hot = [.. rig.Cylinders.Select(_ => new HysteresisComparator(Hot_K, Hot_K - HotBand_K))];
        Change = n > 1 && rig.Arrangement is OneAtATime by ? new CylinderChange(by, n) : null;
        HasReserve = rig.Arrangement is AutomaticChangeover;
        Supply = new SupplyWatch(undersupplied_frac);
        Warm = new HysteresisComparator(rig.Occupancy.WakesBelow_K + Occupancy.AsleepAgain_K, rig.Occupancy.WakesBelow_K);
        Power = rig.Power is null ? null : new PowerSide(rig);
    }

    public ThermostatControl? Thermostat { get; }

    public FurnaceControl? Furnace { get; }

    public ApplianceControl[] Appliances { get; }

    public HeaterControl[] Heaters { get; }

    /// <summary>Whether damp settles on the coldest surface; it must dry a little before the event is repeated.</summary>
    public HysteresisComparator Damp { get; } = new(1, Dry_frac);

    /// <summary>Whether each node's water is free of ice.</summary>
    public HysteresisComparator[] Liquid { get; }

    /// <summary>Whether each node's water is all ice.</summary>
    public HysteresisComparator[] Solid { get; }

    /// <summary>A blanket for each cylinder, or null.</summary>
    public BlanketControl?[] Blankets { get; }

    /// <summary>Change of cylinders by hand, or null.</summary>
    public CylinderChange? Change { get; }

    /// <summary>Whether there is a changeover regulator.</summary>
    public bool HasReserve { get; }

    public SupplyWatch Supply { get; }

    /// <summary>The 12 V side, or null.</summary>
    public PowerSide? Power { get; }

    /// <summary>Whether inside air is above freezing.</summary>
    public HysteresisComparator Freezing { get; } = new(ZeroCelsius_K, ZeroCelsius_K);

    /// <summary>Whether inside is warm enough to sleep in.</summary>
    public HysteresisComparator Warm { get; }

    /// <summary>Whether there is something that somebody woken by the cold can do.</summary>
    public bool CanAct => _rig.Coach is not null && (Furnace is not null || Change is not null);

    /// <summary>Whether each cylinder is past its temperature limit.</summary>
    public HysteresisComparator[] Hot { get; }

    /// <summary>Whether the reserve side feeds.</summary>
    public HysteresisComparator Reserve { get; } = new(ReserveFeeds_frac, ReserveRests_frac);

    /// <summary>Every window of the clock at whose edges something switches.</summary>
    public IEnumerable<ClockWindow> Windows()
    {
        foreach (GasAppliance appliance in _rig.Appliances)
        {
            foreach (ClockWindow window in appliance.Hours) yield return window;
            foreach (WaterDraw draw in appliance.Node?.Draws ?? []) yield return draw.Window;
        }

        foreach (OtherHeater heater in _rig.Heaters)
        {
            foreach (ClockWindow window in heater.Hours) yield return window;
        }

        foreach (ClockWindow window in _rig.Coach?.CoverHours ?? []) yield return window;
        if (_rig.Thermostat is not null) yield return _rig.Thermostat.NightHours;
        foreach (ClockWindow window in Power?.Windows() ?? []) yield return window;
        for (int i = 0; i < Blankets.Length; i++)
        {
            foreach (ClockWindow window in _rig.Cylinders[i].Blanket?.Hours ?? []) yield return window;
        }
    }

    /// <summary>Applies the time of day to everything with hours. [s]</summary>
    public void SetClock(double clock_s)
    {
        Thermostat?.SetClock(clock_s);
        foreach (ApplianceControl appliance in Appliances) appliance.SetClock(clock_s);
        foreach (HeaterControl heater in Heaters) heater.SetClock(clock_s);
        foreach (BlanketControl? blanket in Blankets) blanket?.SetClock(clock_s);
        Power?.SetClock(clock_s);
    }

    /// <summary>Whether only the fan's heat and current end with the furnace's phase: a step then goes over that and needs no landing.</summary>
    public bool FanStopsWithin => Furnace is { Phase: FurnacePhase.PostPurge } && Power is null or { BatteryCarriesLoads: true };

    /// <summary>The next time that something here waits for; infinite where nothing does. [s]</summary>
    /// <param name="time_s">Now. [s]</param>
    /// <param name="s">The state.</param>
    /// <param name="at">Its algebraic part.</param>
    /// <param name="stop_s">The end of the step without it. [s]</param>
    public double NextTimer_s(double time_s, PlantState s, AlgebraicState at, double stop_s)
    {
        double next_s = Furnace is null || FanStopsWithin ? double.PositiveInfinity : Furnace.PhaseEnds_s;

        // The thermostat is past its dead band and only its shortest time keeps it from switching.
        if (Thermostat is not null && Thermostat.MayChangeFrom_s > time_s && Thermostat.EventValue_K(s.Sensor_K) >= 0)
            next_s = Math.Min(next_s, Thermostat.MayChangeFrom_s);
        foreach (ApplianceControl appliance in Appliances)
        {
            if (appliance.RetryAt_s < Math.Min(next_s, stop_s) && !appliance.CannotLight(at.HighestFeedWithin_Pa(stop_s - time_s)))
                next_s = appliance.RetryAt_s;
        }

        if (Power is not null) next_s = Math.Min(next_s, Power.NextTimer_s(time_s));
        return Change is null ? next_s : Math.Min(next_s, Change.At_s);
    }

    /// <summary>Heat of the other heaters: electric ones share what the breaker leaves. [W]</summary>
    /// <param name="shore_W">What else runs on shore power. [W]</param>
    public double OtherHeat_W(double shore_W)
    {
        double electric_W = 0, own_W = 0;
        foreach (HeaterControl heater in Heaters)
        {
            if (heater.IsElectric) electric_W += heater.Wanted_W;
            else own_W += heater.Wanted_W;
        }

        return own_W + Math.Clamp(_rig.Site.Breaker_W - shore_W, 0, electric_W);
    }

    /// <summary>Whether an appliance waits for gas to be lit.</summary>
    public bool Waiting() => SupplyWatch.Waiting(Thermostat?.Calls ?? false, Furnace, Appliances) || Power?.Generator is { WantsGas: true };

    /// <summary>What the blankets on the battery draw, or would draw if there were voltage. [W]</summary>
    public double BatteryBlankets_W(bool wanted)
    {
        double sum_W = 0;
        foreach (BlanketControl? blanket in Blankets)
        {
            if (blanket is { OnBattery: true }) sum_W += wanted ? blanket.Wanted_W : blanket.Power_W;
        }

        return sum_W;
    }

    /// <summary>Voltage is gone, or back: what needs it stops, or may go on.</summary>
    public void SetVoltage(bool live)
    {
        if (!live) Furnace?.Cut();
        foreach (BlanketControl? blanket in Blankets)
        {
            if (blanket is { OnBattery: true }) blanket.HasVoltage = live;
        }

        for (int i = 0; i < Appliances.Length; i++)
        {
            if (_rig.Appliances[i].NeedsPower) Appliances[i].SetVoltage(live);
        }
    }

    /// <summary>Whether a gas consumer is undersupplied: it waits to be lit, or is open with too low a satisfied fraction.</summary>
    /// <param name="place">Its index among the loads.</param>
    /// <param name="taken_kg_s">Flow to it. [kg/s]</param>
    /// <param name="plant">Holds its full flow.</param>
    /// <param name="undersupplied_frac">Satisfied fraction below which it is undersupplied.</param>
    public bool IsShort(int place, double taken_kg_s, Plant plant, double undersupplied_frac)
    {
        int i = place - Plant.FurnaceLoad - 1;
        bool waits = i < 0 ? Furnace is { WantsGas: true, IsLit: false } && Thermostat!.Calls : i < Appliances.Length ? Appliances[i].WantsGas : Power?.Generator is { WantsGas: true };
        return waits || (plant.Supply.IsOpen(place) && taken_kg_s < undersupplied_frac * plant.Loads[place].Full_kg_s);
    }

    /// <summary>Event function of the flames: the largest shortfall of delivery pressure below what keeps a flame lit. [Pa]</summary>
    public double FlameEventValue_Pa(double delivery_Pa)
    {
        double past_Pa = Furnace is { IsLit: true } ? _rig.Furnace!.DropOutPressure_Pa - delivery_Pa : -1;
        for (int i = 0; i < Appliances.Length; i++)
        {
            if (Appliances[i].ValveOpen) past_Pa = Math.Max(past_Pa, _rig.Appliances[i].MinimumPressure_Pa - delivery_Pa);
        }

        if (Power?.Generator is { Runs: true }) past_Pa = Math.Max(past_Pa, _rig.Power!.Generator!.MinimumPressure_Pa - delivery_Pa);
        return past_Pa;
    }

    /// <summary>Gas demand, including appliances that wait to be lit with their valve shut. [kg/s]</summary>
    public double Demand_kg_s(Plant plant)
    {
        double demand_kg_s = plant.Supply.Demand_kg_s;
        if (Furnace is { WantsGas: true, ValveOpen: false } && Thermostat!.Calls) demand_kg_s += plant.Loads[Plant.FurnaceLoad].Full_kg_s;
        for (int i = 0; i < Appliances.Length; i++)
        {
            if (Appliances[i].WantsGas) demand_kg_s += plant.Loads[Plant.FurnaceLoad + 1 + i].Full_kg_s;
        }

        if (Power?.Generator is { WantsGas: true }) demand_kg_s += plant.Loads[plant.GeneratorLoad].Full_kg_s;
        return demand_kg_s;
    }
}
