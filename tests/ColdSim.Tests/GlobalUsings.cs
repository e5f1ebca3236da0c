// The engine has a Snapshot of its own, an instant of a run; in tests the word means the kept text.
global using RunSnapshot = ColdSim.Model.Engine.Snapshot;
global using Snapshot = Snapshooter.Xunit.Snapshot;
