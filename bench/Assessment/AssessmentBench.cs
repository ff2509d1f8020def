using BenchmarkDotNet.Attributes;
using Runnel.Catalogue;
using Runnel.Engine.Assess;
using Runnel.Files;

namespace Runnel.Bench;

/// <summary>Inside one warm process: reading a plan, one assessment, and the ranges. Ratios are against one assessment.</summary>
[MemoryDiagnoser]
public class AssessmentBench
{
    private string _text = "";
    private PlanFile _file = null!;

    /// <summary>The examples, by file name.</summary>
    [Params("laundry-room.yaml", "lean-to-greenhouse.yaml")]
    public string Example { get; set; } = "";

    [GlobalSetup]
    public void Open()
    {
        _text = File.ReadAllText(Path.Combine(Root(), "examples", Example));
        _file = PlanFile.Parse(_text, Example);
    }

    [Benchmark(Baseline = true)]
    public Assessment Assess() => Assessor.Assess(_file.Plan!, Shelves.Standard);

    [Benchmark]
    public PlanFile Read() => PlanFile.Parse(_text, Example);

    [Benchmark]
    public Assessment AssessWith256Draws() => Assessor.Assess(_file.Plan!, Shelves.Standard, draws: 256);

    private static string Root()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Runnel.slnx")))
        {
            at = at.Parent;
        }
        return at?.FullName ?? throw new DirectoryNotFoundException("run it from within the repository");
    }
}
