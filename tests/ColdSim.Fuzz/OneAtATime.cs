using Xunit;

// The cases of one test are spread over the processors already, and times are measured.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
