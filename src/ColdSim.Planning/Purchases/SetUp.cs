using System.Globalization;
using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Limits;

namespace ColdSim.Planning.Purchases;

/// <summary>Cylinders that can be bought, and how they are joined.</summary>
/// <param name="Size">The size.</param>
/// <param name="Count">How many, one or two.</param>
/// <param name="Changeover">Whether an automatic changeover joins them; two without it are changed by hand.</param>
/// <param name="Blanket">Whether each has a heated blanket.</param>
public sealed record SetUp(StandardSize Size, int Count, bool Changeover, bool Blanket)
{
    private static readonly string[] UsCarried = ["20 lb", "30 lb", "40 lb"], MetricCarried = ["6 kg", "11 kg"];

    private const string UsGround = "100 lb", MetricGround = "33 kg";

    /// <summary>Whether it is too large to be carried and stays on the ground, after 24 CFR 3280.704.</summary>
    public bool IsOnGround => ComparedOption.IsTooLargeToCarry(Size.Full());

    /// <summary>Its name, such as "2 × 30 lb, changeover".</summary>
    public string Name
    {
        get
        {
            string count = Count == 1 ? Size.Name : string.Create(CultureInfo.InvariantCulture, $"{Count} × {Size.Name}");
            string joined = Count == 1 ? "" : Changeover ? ", changeover" : ", by hand";
            return $"{count}{joined}{(Blanket ? ", blanket" : "")}";
        }
    }

    /// <summary>All its cylinders, legally full. [kg]</summary>
    public double LegalFill_kg => Count * Size.LegalFill_kg;

    /// <summary>The heaviest single thing to lift: a full cylinder. [kg]</summary>
    public double Lift_kg => Size.Tare_kg + Size.LegalFill_kg;

    /// <summary>Everything, full. [kg]</summary>
    public double Weight_kg => Count * Lift_kg;

    /// <summary>The usual ones for a rig: by the kilogram or by the pound as its first cylinder is sold.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="metric">Whether by the kilogram where its cylinder is of no standard size.</param>
    /// <exception cref="ArgumentNullException">There is no rig.</exception>
    public static IReadOnlyList<SetUp> For(Rig rig, bool metric)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Usual(StandardSize.Find(rig.Cylinders[0].Name)?.IsMetric ?? metric);
    }

    /// <summary>What a tongue or a locker carries, one and two of each, and the one that stands on the ground.</summary>
    /// <param name="metric">Whether by the kilogram.</param>
    public static IReadOnlyList<SetUp> Usual(bool metric)
    {
        List<SetUp> all = [];
        foreach (string name in metric ? MetricCarried : UsCarried)
        {
            StandardSize size = StandardSize.Find(name)!;
            foreach ((int count, bool changeover) in new[] { (1, false), (2, false), (2, true) })
            {
                all.Add(new SetUp(size, count, changeover, Blanket: false));
                all.Add(new SetUp(size, count, changeover, Blanket: true));
            }
        }

        StandardSize ground = StandardSize.Find(metric ? MetricGround : UsGround)!;
        return [.. all, new SetUp(ground, 1, false, Blanket: false), new SetUp(ground, 1, false, Blanket: true)];
    }

    /// <summary>The rig with these cylinders in place of its own, legally full, where they were.</summary>
    /// <param name="rig">The rig.</param>
    public Rig Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        CylinderSpecification first = rig.Cylinders[0];
        BlanketSpecification? blanket = Blanket
            ? rig.Cylinders.Select(c => c.Blanket).FirstOrDefault(b => b is { Power_W: > 0 }) ?? RigVariant.UsualBlanket(hookup: true)
            : null;
        CylinderSpecification one = SizeSweep.Resized(first, Size.Full()) with
        {
            Label = null,
            Contents_kg = Size.LegalFill_kg,
            InitialTemperature_K = null,
            InitialComposition = null,
            Blanket = blanket,
        };
        return rig with
        {
            Site = Blanket ? rig.Site with { Hookup = true } : rig.Site,
            Cylinders = [.. Enumerable.Repeat(one, Count)],
            Arrangement = Changeover ? rig.Arrangement as AutomaticChangeover ?? new AutomaticChangeover() : rig.Arrangement as OneAtATime
                ?? new OneAtATime(),

            // What is bought here is gas and its cylinders: electricity is assumed to be there.
            Power = null,
        };
    }
}
