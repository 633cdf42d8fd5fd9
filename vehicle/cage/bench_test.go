package cage

import (
	"testing"

	"gapsheet/vehicle/quantity"
)

func BenchmarkAngleAt(b *testing.B) {
	p, q, r := Within(Vector{X: 1}, 0.003), Within(Vector{}, 0.003), Within(Vector{0.3, 0.8, 0.2}, 0.003)
	for b.Loop() {
		AngleAt(p, q, r)
	}
}

func BenchmarkHelmetToHoop(b *testing.B) {
	hoop := Tube{Radius: quantity.Exactly(0.135)}
	for _, p := range []Vector{{0, 0.6, 0}, {0, 0.55, 1.2}, {0, -0.55, 1.2}, {0, -0.6, 0}} {
		hoop.Points = append(hoop.Points, Within(p, 0.003))
	}
	helmet := Within(Vector{0.2, 0.35, 1.0}, 0.005)
	for b.Loop() {
		NearestSurface(helmet, []Tube{hoop}, []quantity.Range{quantity.Exactly(0.045)})
	}
}
