export default function Explore() {
  return <div />
}
