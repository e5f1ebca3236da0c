namespace ColdSim.Model.Supply;

/// <summary>The first stages of a regulator at one feed, for many intermediate pressures.</summary>
internal readonly struct FedStages
{
    private readonly FedOrifice _service, _reserve;

    // Where pressure is lost before a stage, what passes it has to be solved for at each intermediate pressure.
    private readonly FirstStages? _losing;
    private readonly FeedPressures _feed;
    private readonly double _air_Pa;

    /// <summary>Two stages without loss before them.</summary>
    /// <param name="service">The service side.</param>
    /// <param name="reserve">The reserve side; passes nothing where it is left out.</param>
    public FedStages(in FedOrifice service, in FedOrifice reserve) => (_service, _reserve) = (service, reserve);

    /// <summary>Stages with loss before them.</summary>
    /// <param name="stages">The stages.</param>
    /// <param name="feed">Inlet pressures of the regulator.</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    public FedStages(FirstStages stages, in FeedPressures feed, double air_Pa) => (_losing, _feed, _air_Pa) = (stages, feed, air_Pa);

    /// <summary>Flow of the service side. [kg/s]</summary>
    /// <param name="intermediate_Pa">Between the stages. [Pa absolute]</param>
    public double Service_kg_s(double intermediate_Pa)
        => _losing is null ? _service.Flow_kg_s(intermediate_Pa) : _losing.Service_kg_s(_feed, intermediate_Pa, _air_Pa);

    /// <summary>Flow of the reserve side. [kg/s]</summary>
    /// <param name="intermediate_Pa">Between the stages. [Pa absolute]</param>
    public double Reserve_kg_s(double intermediate_Pa)
        => _losing is null ? _reserve.Flow_kg_s(intermediate_Pa) : _losing.Reserve_kg_s(_feed, intermediate_Pa, _air_Pa);

    /// <summary>Flow of both. [kg/s]</summary>
    /// <param name="intermediate_Pa">Between the stages. [Pa absolute]</param>
    public double Flow_kg_s(double intermediate_Pa) => Service_kg_s(intermediate_Pa) + Reserve_kg_s(intermediate_Pa);
}
