#pragma warning disable
using Runnel.App;
var bench = Workbench.Open(args[0]);
foreach (var e in bench.File.Errors) Console.WriteLine(e);
if (bench.File.Plan is null) return 2;
var sw = System.Diagnostics.Stopwatch.StartNew();
var a = bench.Assess()!;
Console.WriteLine(sw.ElapsedMilliseconds);
sw.Restart(); for (int i = 0; i < 200; i++) bench.Assess(); Console.WriteLine($"{sw.Elapsed.TotalMilliseconds / 200} ms");
sw.Restart(); a = bench.Assess(256)!; Console.WriteLine($"{sw.ElapsedMilliseconds} ms draws");
var s = bench.Style; var w = new Working(s);
foreach (var f in a.Figures.All) Console.WriteLine($"{f.Id,-40} {s.Write(f),16} {s.Range(f),20}  {w.Sentence(f)}");
foreach (var f in a.Findings) Console.WriteLine($"{f.Severity} {f.Code} [{f.Where}] saw: {s.Print(f.Saw)}; wanted: {s.Print(f.Wanted)}; do: {s.Print(f.Do)}");
return 0;
