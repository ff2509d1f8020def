using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Frame;

/// <summary>A piece of the stand with its load, on the way through the formulas.</summary>
internal sealed class Piece
{
    private const string Nds = "National Design Specification for Wood Construction";

    private readonly Lumber _lumber;
    private readonly LumberSize _size;
    private readonly Figure _mass;
    private readonly Figure _bearing;
    private readonly Func<Estimate, Figure> _take;
    private readonly Figure _thickness;
    private readonly Figure _depth;
    private readonly Figure _area;

    public Piece(Lumber lumber, LumberSize size, TimberValues values, Figure mass, Figure bearing, Func<Estimate, Figure> take)
    {
        (_lumber, _size, Values, _mass, _bearing, _take) = (lumber, size, values, mass, bearing, take);
        var from = size.Nominal ? new Source(size.Source) : Source.Definition(size.Source);
        _thickness = Figure.Constant(size.Thickness * 1000, Units.Millimetre, $"Actual thickness of {lumber.Name}", from);
        _depth = Figure.Constant(size.Depth * 1000, Units.Millimetre, $"Actual depth of {lumber.Name}", from);
        _area = FrameFormulas.SectionArea.Apply(_thickness, _depth);
    }

    public TimberValues Values { get; }

    private bool Wet => _lumber.Wet;

    /// <summary>As a rail or joist on edge between two supports.</summary>
    public IReadOnlyList<Utilisation> AsBeam(List<Finding> findings)
    {
        var length = _take(_lumber.Length);
        var span = _lumber.Span is { } free ? _take(free) : length.Called($"Free span of {_lumber.Name}: its whole length", Units.Metre);
        if (span.Si > length.Si)
        {
            span = length;
        }
        if (Faulty(findings, FrameFormulas.LineLoad, _mass, _bearing, length) || Faulty(findings, StrengthFormulas.BeamSlenderness, span, _thickness, _depth))
        {
            return [];
        }
        var density = Figure.Constant(600, Units.KilogramPerCubicMetre, "Density of damp softwood",
            new Source("Wood Structural Design Data 1992: southern pine, the heaviest of the groups, 36.7 lb/ft³"));
        var gravity = Figure.Constant(Weight.Gravity, Units.MetrePerSecondSquared, "Standard gravity", Source.Definition("9.80665 m/s²"));
        var self = (_area * density * gravity).Called("Its own weight", Units.NewtonPerMetre);
        var load = (FrameFormulas.LineLoad.Apply(_mass, _bearing, length) + self).Called($"Load on each length of {_lumber.Name}", Units.NewtonPerMetre);
        if (Faulty(findings, FrameFormulas.ShearStress, load, span, _area))
        {
            return [];
        }
        var slenderness = StrengthFormulas.BeamSlenderness.Apply(span, _thickness, _depth);
        if (slenderness.Si > Beam.MaxSlenderness)
        {
            findings.Add(StandFindings.TooSlender(_lumber, slenderness));
            return [];
        }
        return [Bending(load, span, slenderness), Shear(load, span), EndBearing(load, span), Sag(load, span)];
    }

    /// <summary>As a leg: a column with ends that turn freely.</summary>
    public IReadOnlyList<Utilisation> AsLeg(List<Finding> findings)
    {
        var length = _take(_lumber.Length);
        var slenderness = (length / _thickness).Called($"Length over thickness of {_lumber.Name}", Units.One);
        if (slenderness.Si > Beam.MaxSlenderness)
        {
            findings.Add(StandFindings.TooSlender(_lumber, slenderness));
            return [];
        }
        if (Faulty(findings, FrameFormulas.LegLoad, _mass, _bearing))
        {
            return [];
        }
        var demand = StrengthFormulas.Stress.Apply(FrameFormulas.LegLoad.Apply(_mass, _bearing), _area).Called("Compression in a leg", Units.Megapascal);
        var size = SizeOf(SizeFactor.Compression(_size), "compression");
        var wet = WetOf(Spared(Values.Wet.Compression, Values.Compression * size.Si, Values.Wet.CompressionSpared), "compression");
        var reference = Value(Values.Compression, "compression along the grain, F_c");
        var straight = StrengthFormulas.AllowableCompression.Apply(reference, Duration, wet, size, One("Column stability factor, not yet counted"));
        var sawn = Figure.Constant(Strength.SawnColumn, Units.One, "c of sawn columns", new Source($"{Nds}, 3.7.1"));
        var shortest = slenderness.Si < 0.1 ? Figure.Constant(0.1, Units.One, "Length over thickness, as a block", Source.Definition("least value of the rule")) : slenderness;
        var stability = StrengthFormulas.ColumnStability.Apply(shortest, Stiffness(Values.Stability, "for buckling, E_min"), straight, sawn);
        var allowed = StrengthFormulas.AllowableCompression.Apply(reference, Duration, wet, size, stability);
        return [Of("compression", demand, allowed)];
    }

    private static Figure Duration { get; } = Figure.Constant(0.9, Units.One, "Load duration factor C_D: permanent",
        new Source($"{Nds}, 2.3.2 (0.9 read in a university's course example)"));

    private static Figure Repetitive { get; } = One("Repetitive member factor C_r: none taken");

    private Utilisation Bending(Figure load, Figure span, Figure slenderness)
    {
        var demand = FrameFormulas.BendingStress.Apply(load, span, FrameFormulas.SectionModulus.Apply(_thickness, _depth));
        var size = SizeOf(SizeFactor.Bending(_size), "bending");
        var wet = WetOf(Spared(Values.Wet.Bending, Values.Bending * size.Si, Values.Wet.BendingSpared), "bending");
        var reference = Value(Values.Bending, "bending, F_b");
        var braced = StrengthFormulas.AllowableBending.Apply(reference, Duration, wet, One("Beam stability factor, not yet counted"), size, Repetitive);
        var stability = StrengthFormulas.BeamStability.Apply(slenderness, Stiffness(Values.Stability, "for buckling, E_min"), braced);
        return Of("bending", demand, StrengthFormulas.AllowableBending.Apply(reference, Duration, wet, stability, size, Repetitive));
    }

    private Utilisation Shear(Figure load, Figure span) => Of(
        "shear", FrameFormulas.ShearStress.Apply(load, span, _area),
        StrengthFormulas.AllowableShear.Apply(Value(Values.Shear, "shear along the grain, F_v"), Duration, WetOf(Values.Wet.Shear, "shear")));

    private Utilisation EndBearing(Figure load, Figure span)
    {
        var two = Figure.Constant(2, Units.One, "Ends", Source.Definition("two supports"));
        var end = Figure.Constant(38, Units.Millimetre, "Length of bearing at each end",
            Source.FromMemory("International Residential Code, R502.6: at least 1.5 in on wood"));
        var contact = (_thickness * end).Called("Area under each end", Units.SquareCentimetre);
        var demand = StrengthFormulas.Stress.Apply((load * span / two).Called("Force on each support", Units.Newton), contact);
        return Of("bearing", demand, StrengthFormulas.AllowableBearing.Apply(Value(Values.Bearing, "bearing across the grain, F_c⊥"), WetOf(Values.Wet.Bearing, "bearing")));
    }

    private Utilisation Sag(Figure load, Figure span)
    {
        var elasticity = Stiffness(Values.Elasticity, "E");
        var first = (FrameFormulas.Deflection.Apply(load, span, elasticity, FrameFormulas.SectionInertia.Apply(_thickness, _depth))
            + FrameFormulas.ShearDeflection.Apply(load, span, elasticity, _area)).Called("Sag when filled", Units.Millimetre);
        var creep = Figure.Constant(Wet ? 2.0 : 1.5, Units.One, Wet ? "Factor for creep, wet" : "Factor for creep, seasoned and dry", Source.FromMemory($"{Nds}, 3.5.2"));
        var passing = Figure.Constant(0, Units.Millimetre, "Sag by what comes and goes", Source.Definition("a bed of water stays"));
        // Beyond a metre the piece has long broken: the other checks say so.
        var demand = first.Value > 1000 ? first : FrameFormulas.LongTermDeflection.Apply(first, creep, passing);
        var share = Figure.Constant(240, Units.One, "Span over allowed sag", Source.Practice("joist tables, span/240 under the whole load"));
        return Of("sag", demand, (span / share).Called("Allowed sag", Units.Millimetre));
    }

    private Utilisation Of(string mode, Figure demand, Figure allowed) =>
        new(mode, demand, allowed, (demand / allowed).Called($"{_lumber.Name}: {mode}, share of what is allowed", Units.Percent));

    private Figure Value(double value, string what) =>
        Figure.Constant(value, Units.Megapascal, $"Reference value of {Values.Name} in {what}", Values.Source);

    private Figure Stiffness(double value, string what) => StrengthFormulas.AdjustedStiffness.Apply(
        Value(value, $"elasticity {what}"), WetOf(Values.Wet.Elasticity, "elasticity")).Called($"Elasticity in service {what}", Units.Megapascal);

    private Figure SizeOf(double factor, string what)
    {
        if (Values.TakesSizeFactor)
        {
            return Figure.Constant(factor, Units.One, $"Size factor C_F in {what}", new Source("NELMA grading rules, table A"));
        }
        // Lumber of unknown kind is spared no reduction where it is deep.
        return _lumber.Wood == Wood.Unknown && factor < 1
            ? Figure.Constant(factor, Units.One, $"Size factor C_F in {what}", new Source("NELMA grading rules, table A"))
            : One($"Size factor C_F in {what}: none taken");
    }

    private Figure WetOf(double factor, string what) => Wet
        ? Figure.Constant(factor, Units.One, $"Wet service factor C_M in {what}", Values.Wet.Source)
        : One($"Wet service factor C_M in {what}: stays dry, as the plan says");

    private static double Spared(double factor, double value, double atOrUnder) => value <= atOrUnder ? 1 : factor;

    private static Figure One(string label) => Figure.Constant(1, Units.One, label, Source.Definition("1"));

    private bool Faulty(List<Finding> findings, Formula formula, params IReadOnlyList<Figure> arguments)
    {
        var faults = formula.Check(arguments);
        foreach (var fault in faults)
        {
            findings.Add(StandFindings.OutOfRange(_lumber, fault));
        }
        return faults.Count > 0;
    }
}
