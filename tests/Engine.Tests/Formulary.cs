using System.Reflection;
using Runnel.Engine.Figures;

namespace Runnel.Engine.Tests;

/// <summary>Every formula of the engine, found by its list; every proof of the tests.</summary>
internal static class Formulary
{
    public static IReadOnlyList<Formula> All { get; } =
    [
        .. typeof(Formula).Assembly.GetTypes()
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Static))
            .Where(p => p.Name == "All" && p.PropertyType == typeof(IReadOnlyList<Formula>))
            .SelectMany(p => (IReadOnlyList<Formula>)p.GetValue(null)!)
            .Distinct<Formula>(ReferenceEqualityComparer.Instance),
    ];

    /// <summary>Formulas that are written down as fields, listed or not.</summary>
    public static IReadOnlyList<Formula> Written { get; } =
    [
        .. typeof(Formula).Assembly.GetTypes()
            .SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Static))
            .Where(f => f.FieldType == typeof(Formula))
            .Select(f => (Formula)f.GetValue(null)!),
    ];

    public static IReadOnlyList<(MethodInfo Test, ProofAttribute Proof)> Proofs { get; } =
    [
        .. typeof(Formulary).Assembly.GetTypes()
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .SelectMany(m => m.GetCustomAttributes<ProofAttribute>().Select(p => (m, p))),
    ];

    /// <summary>A figure made from a number, for tests.</summary>
    public static Figure Of(double value, Runnel.Engine.Quantities.Unit unit) =>
        Figure.Constant(value, unit, "a test's number", Source.Definition("a test"));
}
