namespace ColdSim.Model.Engine;

/// <summary>What cylinders and regulator could have given at a sample of a finished run.</summary>
public interface ISupplyOutlook
{
    /// <summary>
    /// The coldest liquid at which every appliance at once is still fed in full: the temperature that a steady supply is stated for;
    /// NaN where the regulator never passes that much. [K]
    /// </summary>
    /// <param name="series">The run's curves.</param>
    /// <param name="sample">Index of the sample.</param>
    double AllowedLiquid_K(RunSeries series, int sample);

    /// <summary>Gas that could be given at a sample, at the delivery pressure that every appliance needs, as gross heat. [W]</summary>
    /// <param name="series">The run's curves.</param>
    /// <param name="sample">Index of the sample.</param>
    double CanGiveNow_W(RunSeries series, int sample);

    /// <summary>Gas that could be given without end if a sample's weather, fill, frost and blankets stayed, as gross heat. [W]</summary>
    /// <param name="series">The run's curves.</param>
    /// <param name="sample">Index of the sample.</param>
    double CanGiveWithoutEnd_W(RunSeries series, int sample);

    /// <summary>
    /// Liquid that a mixed gas would leave in a cylinder: what stays when vapour has been drawn at one temperature until its pressure no
    /// longer feeds every appliance in full; NaN where the regulator never does. [kg]
    /// </summary>
    /// <param name="series">The run's curves.</param>
    /// <param name="sample">From which sample on.</param>
    /// <param name="cylinder">Place of the cylinder.</param>
    /// <param name="t_K">That temperature. [K]</param>
    double LeftBehind_kg(RunSeries series, int sample, int cylinder, double t_K);
}
