using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using Runnel.Bench;

BenchmarkRunner.Run<AssessmentBench>(
    DefaultConfig.Instance.AddJob(Job.ShortRun).WithOptions(ConfigOptions.DisableOptimizationsValidator), args);
