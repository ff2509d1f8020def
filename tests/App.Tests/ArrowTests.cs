using System.Reflection;
using NetArchTest.Rules;
using Runnel.Catalogue;
using Runnel.Engine.Assess;
using Runnel.Files;

namespace Runnel.App.Tests;

/// <summary>The arrows of the design: which part may know which.</summary>
public sealed class ArrowTests
{
    private const string Engine = "Runnel.Engine";

    private static readonly string[] Foundations = ["Quantities", "Numerics", "Figures", "Findings"];

    /// <summary>What each folder of Engine may know besides itself. Assess sits on top and knows all.</summary>
    private static readonly Dictionary<string, string[]> MayKnow = new(StringComparer.Ordinal)
    {
        ["Quantities"] = [],
        ["Numerics"] = ["Quantities"],
        ["Figures"] = ["Quantities"],
        ["Findings"] = ["Quantities"],
        ["Plan"] = ["Quantities"],
        ["Water"] = Foundations,
        ["Fish"] = Foundations,
        ["Crops"] = Foundations,
        ["Filter"] = Foundations,
        ["Volumes"] = Foundations,
        ["Flow"] = [.. Foundations, "Plan", "Water", "Volumes"],
        ["Levels"] = [.. Foundations, "Plan", "Volumes"],
        ["Heat"] = Foundations,
        ["Sun"] = [.. Foundations, "Light"],
        ["Weather"] = [.. Foundations, "Heat", "Sun"],
        ["Light"] = [.. Foundations, "Plan"],
        ["Frame"] = [.. Foundations, "Plan"],
        ["Power"] = Foundations,
        ["Year"] = [.. Foundations, "Water", "Fish", "Crops", "Filter", "Heat"],
        ["Money"] = ["Quantities", "Plan"],
    };

    public static TheoryData<string> Folders => [.. EngineFolders().Where(f => f != "Assess")];

    [Theory]
    [MemberData(nameof(Folders))]
    public void Each_folder_of_the_engine_knows_only_what_it_may(string folder)
    {
        Assert.True(MayKnow.TryGetValue(folder, out var allowed), $"say in this test what {folder} may know");
        var forbidden = EngineFolders().Where(f => f != folder && !allowed!.Contains(f)).Select(f => $"{Engine}.{f}").ToArray();
        var result = Types.InAssembly(typeof(Assessor).Assembly)
            .That().ResideInNamespace($"{Engine}.{folder}")
            .ShouldNot().HaveDependencyOnAny(forbidden)
            .GetResult();
        Assert.True(result.IsSuccessful, $"{folder}: {string.Join(", ", result.FailingTypeNames ?? [])}");
    }

    [Fact]
    public void The_engine_knows_no_other_part_and_no_library()
    {
        var known = References(typeof(Assessor).Assembly);
        Assert.All(known, name => Assert.StartsWith("System", name));
    }

    [Fact]
    public void Files_and_Catalogue_know_the_engine_and_not_each_other()
    {
        Assert.DoesNotContain(References(typeof(PlanFile).Assembly), n => n.StartsWith("Runnel", StringComparison.Ordinal) && n != Engine);
        Assert.DoesNotContain(References(typeof(Shelves).Assembly), n => n.StartsWith("Runnel", StringComparison.Ordinal) && n != Engine);
    }

    [Fact]
    public void App_knows_no_host_and_no_screen()
    {
        string[] allowed = [Engine, "Runnel.Files", "Runnel.Catalogue"];
        Assert.All(References(typeof(Workbench).Assembly).Where(n => n.StartsWith("Runnel", StringComparison.Ordinal)), n => Assert.Contains(n, allowed));
        Assert.DoesNotContain(References(typeof(Workbench).Assembly), n => n.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal) || n.StartsWith("Spectre", StringComparison.Ordinal));
    }

    private static IEnumerable<string> EngineFolders() => typeof(Assessor).Assembly.GetTypes()
        .Select(t => t.Namespace ?? "")
        .Where(n => n.StartsWith(Engine + ".", StringComparison.Ordinal))
        .Select(n => n.Split('.')[2])
        .Distinct();

    private static List<string> References(Assembly assembly) => [.. assembly.GetReferencedAssemblies().Select(a => a.Name!)];
}
