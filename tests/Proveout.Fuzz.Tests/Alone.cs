// The time and memory of one input are those of the whole process.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
